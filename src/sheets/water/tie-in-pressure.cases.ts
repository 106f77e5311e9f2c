import type { SheetCase } from '../sheet-case.ts';

export const tieInPressureCases: readonly SheetCase[] = [
  {
    name: '50 psi at a main 10 ft above the tie-in, 5 psi lost: 49.3 psi, 0.433 psi a foot of water',
    source: {
      title: 'handbooks of water distribution',
      place: '0.433 psi for each foot of water',
      mark: 'common practice',
    },
    inputs: {
      pressure: 50 * 6894.757,
      density: 1000,
      from: 14 * 0.3048,
      to: 3 * 0.3048,
      stands: 0.3048,
      loss: 5 * 6894.757,
    },
    outputs: { left: 49.33 * 6894.757 },
    tolerance: { relative: 2e-4, reason: 'three printed digits of 0.433' },
  },
  {
    name: 'a column of 10 m of conventional water is 98.0665 kPa',
    source: {
      title: 'NIST SP 811',
      edition: '2008',
      place: 'B.8, metre of water, conventional: 9.806 65 kPa',
      mark: 'memory',
    },
    inputs: { pressure: 0, density: 1000, from: 10, to: 0, stands: 0, loss: 0 },
    outputs: { left: 98_066.5 },
    tolerance: { relative: 1e-12, reason: 'exact by convention' },
  },
];
