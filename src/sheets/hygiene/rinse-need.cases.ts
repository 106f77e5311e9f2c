import type { SheetCase } from '../sheet-case.ts';
import { rinseShortcut, script } from './sources.ts';

const carry = 4e-6;
const digits = { relative: 1e-3, reason: 'three or four printed digits' } as const;

export const rinseNeedCases: readonly SheetCase[] = [
  ...(
    [
      [1, 4999],
      [2, 70.2],
      [3, 16.75],
    ] as const
  ).map(([stages, r]) => ({
    name: `5000 to 1 in ${stages} counter-current ${stages === 1 ? 'stage' : 'stages'}: r = ${r}`,
    source: script,
    inputs: { ratio: 5000, carry, stages },
    outputs: { counterRatio: r, counterWater: r * carry },
    tolerance: digits,
  })),
  {
    name: '20 g/L to 4.88 mg/L in three fresh rinses: 180 mL',
    source: script,
    inputs: { ratio: 4096, carry, stages: 3 },
    outputs: { serialWater: 180e-6 },
    tolerance: digits,
  },
  {
    name: 'shortcut with 1/n: 1000 to 1 in two stages is 31.62 + 0.5, in three 10.333',
    source: rinseShortcut,
    inputs: { ratio: 1000, carry, stages: 3 },
    outputs: { shortcut: 10, longerShortcut: 10.333 },
    tolerance: { relative: 1e-4, reason: 'five printed digits' },
    notes: ['RINSE_SHORTCUTS'],
  },
];
