import type { SheetCase } from '../sheet-case.ts';
import { dryerManualA, dryerManualB, script } from './sources.ts';

const scfm = 0.0004719474432;
const hot = { table: 'A', pressure: 8e5, ambient: 318.15, inlet: 323.15, dewPoint: 283.15 } as const;

export const dryerCapacityCases: readonly SheetCase[] = [
  {
    name: 'rated 600 scfm, 8 bar(g), room 45 degC, inlet 50 degC, +10 degC: 463 scfm',
    source: dryerManualA,
    inputs: { ...hot, ratedFlow: 600 * scfm, flow: 750 * scfm },
    outputs: { capacity: 463 * scfm },
    tolerance: { relative: 3e-3, reason: 'three printed digits' },
    notes: ['DRYER_TOO_SMALL', 'DRYER_TABLES_DIFFER'],
  },
  {
    name: '750 scfm there need a rated flow of 971.7 scfm',
    source: script,
    inputs: { ...hot, ratedFlow: 600 * scfm, flow: 750 * scfm },
    outputs: { factor: 1.07 * 0.78 * 0.68 * 1.36, ratedNeeded: 971.7 * scfm },
    tolerance: { relative: 1e-4, reason: 'four printed digits' },
  },
  {
    name: 'the rating point of table B gives its rated flow',
    source: dryerManualB,
    inputs: {
      table: 'B',
      ratedFlow: 0.05,
      pressure: 7e5,
      ambient: 298.15,
      inlet: 308.15,
      dewPoint: 276.15,
      flow: 0.05,
    },
    outputs: { factor: 1, capacity: 0.05 },
    tolerance: { relative: 1e-9, reason: 'exact but for rounding' },
  },
];
