import { sampleSpreadCases } from './sample-spread-case.ts';

export const timeSpreadCases = sampleSpreadCases('rows', 1e-2);
