import type { SheetCase } from '../sheet-case.ts';

export const readingSupplyCases: readonly SheetCase[] = [
  {
    name: 'four readings, linear least squares of a numerical library',
    source: {
      title: 'linear least squares in Q^2 of a numerical library',
      place: 'independent script',
      mark: 'computed',
    },
    inputs: {
      lanesOpen: [1, 2, 3, 4],
      pressures: [60000, 54000, 45000, 34000],
      kv: 1.5,
      manifoldHeight: 1.2,
      outletHeight: 1,
      density: 998.2,
      flow: 0.0006,
    },
    outputs: {
      flows: [0.00032827, 0.00062394, 0.00085734, 0.00100031],
      shutOffPressure: 64252.7151,
      factor: 2.86694046e10,
      residual: 1409.0846,
      pressure: 53931.7294,
    },
    tolerance: { relative: 1e-5, reason: 'printed digits of the flows' },
  },
];
