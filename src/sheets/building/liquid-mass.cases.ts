import type { SheetCase } from '../sheet-case.ts';

export const liquidMassCases: readonly SheetCase[] = [
  {
    name: '100 US gal of water at 8.33 lb/gal are 833 lb',
    source: {
      title: 'handbooks of water treatment',
      place: '8.33 lb/gal, the weight of a US gallon of water',
      mark: 'common practice',
    },
    inputs: { volumes: [60 * 3.785411784e-3, 40 * 3.785411784e-3], density: 998.2 },
    outputs: { mass: 833 * 0.45359237 },
    notes: ['CAUTION_MOVING'],
    tolerance: { relative: 1e-3, reason: 'three printed digits' },
  },
];
