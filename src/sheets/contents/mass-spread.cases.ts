import { sampleSpreadCases } from './sample-spread-case.ts';

export const massSpreadCases = sampleSpreadCases('masses', 1e-3);
