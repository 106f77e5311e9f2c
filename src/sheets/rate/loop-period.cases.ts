import type { Source } from '../frame.ts';
import type { SheetCase } from '../sheet-case.ts';
import { arithmetic, lineRecursion } from './sources.ts';

/** Also the check of the search for the longest loop: see `src/line/longest-mean-cycle.test.ts`. */
const maxPlusHelp: Source = {
  title: 'help page of a max-plus toolbox, maximum cycle mean',
  place:
    'matrix of five events after Heidergott, Olsder and van der Woude, Max Plus at Work, 2006; result 17',
  mark: 'read',
};
const exact = { relative: 1e-12, reason: 'additions and one division' };

export const loopPeriodCases: readonly SheetCase[] = [
  {
    name: 'max-plus help page: the circuit of 16 and 18 over two blocks has the mean 17',
    source: maxPlusHelp,
    inputs: { steps: [16, 18], blocks: 2, fills: 1 },
    outputs: { period: 17 },
    tolerance: exact,
    notes: ['RATE_ONE_LOOP_OF_ALL'],
  },
  {
    name: 'washer alone, 4 s and 12 s: 16 s',
    source: lineRecursion,
    inputs: { steps: [4, 12], blocks: 1, fills: 1 },
    outputs: { period: 16 },
    tolerance: exact,
  },
  {
    name: 'interlock of washer and fill, 4 s, 2 s and 13 s: 19 s',
    source: lineRecursion,
    inputs: { steps: [4, 2, 13], blocks: 1, fills: 1 },
    outputs: { period: 19 },
    tolerance: exact,
  },
  {
    name: 'filler alone, 2 s, 13 s, 1 s and 2 s: 18 s',
    source: lineRecursion,
    inputs: { steps: [2, 13, 1, 2], blocks: 1, fills: 1 },
    outputs: { period: 18 },
    tolerance: exact,
  },
  {
    name: 'closing station with room for one set, 2 s and three caps of 5.5 s: 18.5 s',
    source: lineRecursion,
    inputs: { steps: [2, 16.5], blocks: 1, fills: 1 },
    outputs: { period: 18.5 },
    tolerance: exact,
  },
  {
    name: 'the same loop with room for two sets comes back two blocks later: 9.25 s, no longer the longest',
    source: arithmetic,
    inputs: { steps: [2, 16.5], blocks: 2, fills: 1 },
    outputs: { period: 9.25 },
    tolerance: exact,
  },
  {
    name: 'rows of four before six lanes: three indexes of 12 s are two fills, 18 s each',
    source: arithmetic,
    inputs: { steps: [12, 12, 12], blocks: 1, fills: 2 },
    outputs: { period: 18 },
    tolerance: exact,
  },
];
