import type { SheetCase } from '../sheet-case.ts';
import { acidConstant, script } from './sources.ts';

export const hoclFractionCases: readonly SheetCase[] = [
  {
    name: 'Ka 2.7e-8: 90 % at pH 6.614',
    source: acidConstant,
    inputs: { acidity: 6.614 },
    outputs: { share: 0.9 },
    tolerance: { relative: 5e-3, reason: 'two printed digits' },
  },
  ...(
    [
      [7, 0.787],
      [8, 0.27],
      [9, 0.0357],
      [10, 0.0037],
    ] as const
  ).map(([acidity, share]) => ({
    name: `share ${share} at pH ${acidity}`,
    source: script,
    inputs: { acidity, chlorine: 0.05 },
    outputs: { share, hypochlorous: share * 0.05 },
    tolerance: { relative: 5e-3, reason: 'two to three printed digits' },
    notes: ['CHLORINE_STRIP_TOTAL'],
  })),
];
