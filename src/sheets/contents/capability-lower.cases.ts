import type { SheetCase } from '../sheet-case.ts';
import { handbook, statisticsScript } from './fill-sources.ts';

export const capabilityLowerCases: readonly SheetCase[] = [
  {
    name: 'e-Handbook 6.1.6, lower side: limit 8, mean 16, s 2: 1.3333',
    source: handbook('6.1.6'),
    inputs: { lowest: 8e-6, mean: 16e-6, spread: 2e-6, bottles: 50 },
    outputs: { capability: 1.3333 },
    tolerance: { absolute: 5e-5, reason: 'four printed digits' },
  },
  {
    name: 'the same with its bound from fifty bottles: 1.0959',
    source: statisticsScript,
    inputs: { lowest: 8e-6, mean: 16e-6, spread: 2e-6, bottles: 50 },
    outputs: { bound: 1.0958761231883, shareBelow: 3.167124183312e-5 },
    tolerance: { relative: 1e-9, reason: 'the noncentral t of the script is good to nine digits' },
  },
  {
    name: 'an index of 1.5 from ten bottles is 0.884 at 95 %',
    source: statisticsScript,
    inputs: { lowest: 485e-6, mean: 489.5e-6, spread: 1e-6, bottles: 10 },
    outputs: { capability: 1.5, bound: 0.8839826454383, shareBound: 0.004001444053 },
    tolerance: { relative: 1e-8, reason: 'printed digits' },
    notes: ['CAPABILITY_FEW'],
  },
];
