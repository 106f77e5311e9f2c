import type { SheetCase } from '../sheet-case.ts';
import { handbook, statisticsScript } from './fill-sources.ts';

const inputs = { lowest: 8e-6, highest: 20e-6, mean: 16e-6, spread: 2e-6, bottles: 50 } as const;

export const capabilityCases: readonly SheetCase[] = [
  {
    name: 'e-Handbook 6.1.6: limits 8 and 20, mean 16, s 2: Cp 1.0, Cpk 0.6667',
    source: handbook('6.1.6'),
    inputs,
    outputs: { potential: 1, toHighest: 0.6667, toLowest: 1.3333, capability: 0.6667 },
    tolerance: { absolute: 5e-5, reason: 'four printed digits' },
  },
  {
    name: 'of 50 bottles, 95 %: Cp 0.8025 to 1.1971, Cpk 0.5056 to 0.8278',
    source: statisticsScript,
    inputs,
    outputs: {
      potentialLow: 0.8024823281501,
      potentialHigh: 1.1971259252675,
      capabilityLow: 0.50555,
      capabilityHigh: 0.82778,
    },
    tolerance: { relative: 1e-5, reason: 'printed digits' },
  },
];
