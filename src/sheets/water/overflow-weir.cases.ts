import type { SheetCase } from '../sheet-case.ts';
import { swmmOrifice } from './sources.ts';

export const overflowWeirCases: readonly SheetCase[] = [
  {
    name: 'SWMM bottom orifice as a weir: 0.1 m bore, 15 mm over the rim',
    source: {
      ...swmmOrifice,
      place: 'formula read, number computed apart from this program',
      mark: 'computed',
    },
    inputs: { bore: 0.1, head: 0.015, dischargeCoefficient: 0.62 },
    outputs: { flow: 0.00105818 },
    tolerance: { relative: 1e-5, reason: 'printed digits' },
  },
  {
    name: 'SWMM bottom orifice as a hole: 80 mm over the rim, past the crossing at 37.4 mm',
    source: {
      ...swmmOrifice,
      place: 'formula read, number computed apart from this program',
      mark: 'computed',
    },
    inputs: { bore: 0.1, head: 0.08, dischargeCoefficient: 0.62 },
    outputs: { flow: 0.00609961 },
    tolerance: { relative: 1e-5, reason: 'printed digits' },
    notes: ['OVERFLOW_DROWNING'],
  },
  {
    name: "Francis' weir, 3.33 ft^0.5/s, over a rim of 0.1 m bore, 15 mm",
    source: { title: 'Francis weir formula', place: '3.33 in feet', mark: 'memory' },
    inputs: { bore: 0.1, head: 0.015 },
    outputs: { flow: 0.00106106 },
    tolerance: { relative: 4e-3, reason: '3.33 in feet is 1.838 in SI against 1.833' },
  },
];
