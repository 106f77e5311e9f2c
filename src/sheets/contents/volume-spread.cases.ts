import { sampleSpreadCases } from './sample-spread-case.ts';

export const volumeSpreadCases = sampleSpreadCases('capacities', 1e-6);
