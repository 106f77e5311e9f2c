import type { SheetCase } from '../sheet-case.ts';

const hp = 745.6998715822702;

export const unbalanceDeratingCases: readonly SheetCase[] = [
  {
    name: '1.96 %: factor 0.95, a motor of 10 hp gives 9.5 hp',
    source: {
      title: 'public page on voltage unbalance',
      place: 'worked example of a 10 hp motor',
      mark: 'read',
    },
    inputs: { unbalance: 0.01961, power: 10 * hp },
    outputs: { factor: 0.95, power: 9.5 * hp },
    tolerance: { relative: 0.02, reason: 'the curve is read differently by up to 0.02' },
    notes: ['CAUTION_ELECTRICAL', 'DERATING_READ_FROM_CURVE', 'UNBALANCE_OVER_1'],
  },
  {
    name: 'NEMA MG 1 as read elsewhere: 3 % gives 0.88 or 0.90',
    source: {
      title: 'NEMA MG 1, derating curve',
      place: 'two other public readings, their middle',
      mark: 'read',
    },
    inputs: { unbalance: 0.03, power: 1000 },
    outputs: { factor: 0.89 },
    tolerance: { absolute: 0.02, reason: 'the readings disagree' },
  },
];
