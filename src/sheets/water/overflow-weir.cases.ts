import type { SheetCase } from '../sheet-case.ts';

export const overflowWeirCases: readonly SheetCase[] = [
  {
    name: "Francis' weir, 3.33 ft^0.5/s, over a rim of 0.1 m bore, 15 mm",
    source: { title: 'Francis weir formula', place: '3.33 in feet', mark: 'memory' },
    inputs: { bore: 0.1, head: 0.015 },
    outputs: { flow: 0.00106106 },
    tolerance: { relative: 8e-3, reason: '3.33 in feet is 1.838 in SI against the rounded 1.85' },
  },
];
