import type { SheetCase } from '../sheet-case.ts';
import { arithmetic, lineRecursion, taktExample } from './sources.ts';

const hour = 3600;
const exact = { absolute: 1e-9, reason: 'differences of seconds' };

export const fillTimeLeftCases: readonly SheetCase[] = [
  {
    name: 'takt example: 80 units in 820 min leave 10.25 min for each',
    source: taktExample,
    inputs: { rate: 80 / (820 * 60), bottles: 1, otherSteps: [0], blocks: 1, fills: 1 },
    outputs: { left: 615 },
    tolerance: exact,
  },
  {
    name: 'a line that runs at 568.421 an hour with a fill of 13 s in the interlock leaves just these 13 s',
    source: lineRecursion,
    inputs: { rate: 568.421 / hour, bottles: 3, otherSteps: [4, 2], blocks: 1, fills: 1 },
    outputs: { left: 13 },
    tolerance: { absolute: 2e-5, reason: 'six printed digits of the rate, of 19 s' },
  },
  {
    name: 'a line that runs at 600 an hour with a fill of 13 s and no interlock leaves just these 13 s',
    source: lineRecursion,
    inputs: { rate: 600 / hour, bottles: 3, otherSteps: [2, 1, 2], blocks: 1, fills: 1 },
    outputs: { left: 13 },
    tolerance: exact,
  },
  {
    name: 'steps of 20 s in a period of 16 s: 4 s too long before anything is filled',
    source: arithmetic,
    inputs: { rate: 675 / hour, bottles: 3, otherSteps: [12, 8], blocks: 1, fills: 1 },
    outputs: { left: -4 },
    tolerance: exact,
    notes: ['RATE_NO_TIME_LEFT'],
  },
  {
    name: 'a loop through both fills of a block of two, 18 s each, other steps 5 s a fill: 13 s each',
    source: arithmetic,
    inputs: {
      rate: 1200 / hour,
      bottles: 6,
      otherSteps: [2, 1, 2, 2, 1, 2],
      blocks: 1,
      fills: 2,
      fillsInLoop: 2,
    },
    outputs: { left: 13 },
    tolerance: exact,
  },
];
