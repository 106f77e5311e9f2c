import type { SheetCase } from '../sheet-case.ts';
import { twoSolutions } from './sources.ts';

export const strokeChangeCases: readonly SheetCase[] = [
  {
    name: 'measured as computed, 0.449 s at 5.516 bar(g): at 4.137 bar(g) 0.516 s, 67 ms more',
    source: twoSolutions,
    inputs: { asBuilt: [0.449], there: [0.449], here: [0.516] },
    outputs: { times: [0.516], added: 0.067 },
    tolerance: { relative: 1e-9, reason: 'rounding of doubles' },
    notes: ['STROKE_IN_PROPORTION', 'CAUTION_COMPRESSED_AIR'],
  },
  {
    name: 'measured with its cushion at 0.60 s: 0.60 x 0.516/0.449 is 0.6895 s',
    source: { title: 'hand calculation', place: 'proportion, four digits', mark: 'computed' },
    inputs: { asBuilt: [0.6], there: [0.449], here: [0.516] },
    outputs: { times: [0.68953], added: 0.08953 },
    tolerance: { absolute: 1e-5, reason: 'five printed digits' },
  },
  {
    name: 'more pressure here: 1.0 s at a computed 0.663 s becomes 0.6772 s, 0.3228 s less',
    source: { title: 'hand calculation', place: '0.449/0.663', mark: 'computed' },
    inputs: { asBuilt: [1], there: [0.663], here: [0.449] },
    outputs: { times: [0.67722], added: -0.32278 },
    tolerance: { absolute: 1e-5, reason: 'five printed digits' },
  },
  {
    name: 'out and back in one index: what both take longer adds up',
    source: { title: 'hand calculation', place: 'the two before, added', mark: 'computed' },
    inputs: { asBuilt: [0.6, 1], there: [0.449, 0.663], here: [0.516, 0.449] },
    outputs: { times: [0.68953, 0.67722], added: -0.23325 },
    tolerance: { absolute: 1e-5, reason: 'five printed digits' },
  },
];
