import type { SheetCase } from '../sheet-case.ts';

export const valveCvCases: readonly SheetCase[] = [
  {
    name: '8.30 in2, 12 in in 1 s with c 6.4 and a constant of 0.048: Cv 1.06',
    source: {
      title: 'US valve sizing, public document',
      place: 'worked example',
      mark: 'read',
    },
    inputs: {
      area: 8.3 * 0.0254 ** 2,
      stroke: 12 * 0.0254,
      time: 1,
      compressionFactor: 6.4,
      dropFactor: 1 / 0.048,
    },
    outputs: { flowCoefficient: 1.06 * 0.864978 },
    tolerance: { relative: 5e-3, reason: 'as the reference states it; three printed digits' },
    notes: ['VALVE_CV_ROUGH', 'CAUTION_COMPRESSED_AIR'],
  },
];
