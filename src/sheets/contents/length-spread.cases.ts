import { sampleSpreadCases } from './sample-spread-case.ts';

export const lengthSpreadCases = sampleSpreadCases('heights', 1e-4);
