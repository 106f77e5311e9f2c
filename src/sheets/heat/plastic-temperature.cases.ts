import type { SheetCase } from '../sheet-case.ts';

const exact = { absolute: 0.006, reason: 'two digits of degrees Celsius' } as const;

export const plasticTemperatureCases: readonly SheetCase[] = [
  {
    name: 'polycarbonate jugs are washed at 120 to 140 degF',
    source: {
      title: 'public instructions for sanitising polycarbonate jugs',
      place: '120 to 140 degF',
      mark: 'read',
    },
    inputs: { bottle: 'polycarbonate', temperatures: [322.04, 333.15] },
    outputs: { highest: 333.15, hottest: 333.15, margin: 0 },
    tolerance: exact,
    notes: ['PLASTIC_NEAR', 'POLYCARBONATE_CAUSTIC'],
  },
  {
    name: 'returnable PET: about 1 % caustic at 60 degC',
    source: { title: 'US patent 5858105', place: 'washing of returnable PET', mark: 'read' },
    inputs: { bottle: 'PET, returnable', temperatures: [303.15, 333.15] },
    outputs: { highest: 333.15 },
    tolerance: exact,
  },
  {
    name: 'one-way PET gets out of shape from about 55 degC',
    source: { title: 'public product page of one-way PET bottles', place: 'heat resistance', mark: 'read' },
    inputs: { bottle: 'PET, one-way', temperatures: [333.15] },
    outputs: { highest: 328.15, margin: -5 },
    tolerance: exact,
    notes: ['PLASTIC_TOO_HOT', 'PET_SHRINKS'],
  },
];
