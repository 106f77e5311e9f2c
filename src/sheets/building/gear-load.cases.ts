import type { SheetCase } from '../sheet-case.ts';
import { arithmetic } from './sources.ts';

export const gearLoadCases: readonly SheetCase[] = [
  {
    name: '2000 kg on four skates of four wheels, three skates carrying: 1634 N a wheel, 4.1 MPa on 10 by 40 mm',
    source: arithmetic,
    inputs: {
      mass: 1940,
      gearMass: 60,
      wheels: 16,
      carryingWheels: 12,
      contactLength: 0.01,
      contactWidth: 0.04,
      wheelCapacity: 500,
    },
    outputs: { wheelForce: 1225.83, hardestForce: 1634.44, pressure: 4.0861e6, wheelShare: 1 / 3 },
    tolerance: { relative: 1e-5, reason: 'six digits' },
    notes: ['CAUTION_STRUCTURE', 'CAUTION_MOVING'],
  },
];
