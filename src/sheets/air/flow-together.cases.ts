import type { SheetCase } from '../sheet-case.ts';

export const flowTogetherCases: readonly SheetCase[] = [
  {
    name: 'two users of 250 and 100 cfm draw the 350 cfm of the draw-down example',
    source: {
      title: 'receiver draw-down example of a public engineering handbook, split by us into two users',
      place: 'flow out of the receiver',
      mark: 'computed',
    },
    inputs: { flows: [250 * 0.000471947443, 100 * 0.000471947443] },
    outputs: { flow: 350 * 0.000471947443 },
    tolerance: { relative: 1e-12, reason: 'a sum' },
  },
];
