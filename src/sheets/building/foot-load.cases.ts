import type { SheetCase } from '../sheet-case.ts';
import { arithmetic, fitting } from './sources.ts';

export const footLoadCases: readonly SheetCase[] = [
  {
    name: '2400 kg on four feet of 80 mm: 1.1706 MPa',
    source: fitting,
    inputs: { dryMass: 2400, feet: 4, footDiameter: 0.08 },
    outputs: { pressure: 1.1706e6 },
    tolerance: { relative: 1e-4, reason: 'five printed digits' },
    notes: ['CAUTION_STRUCTURE', 'UNEVEN_FLOOR', 'FOOT_OVER_ALLOWED', 'FOOT_DRY_ONLY'],
  },
  {
    name: '1800 kg, 400 kg of water, 200 kg of product: 7.845 kN a foot on three of four, a plate of 100 mm for 1 MPa',
    source: arithmetic,
    inputs: { dryMass: 1800, waterMass: 400, productMass: 200, feet: 4, footDiameter: 0.08, allowed: 1e6 },
    outputs: {
      mass: 2400,
      footForce: 5883.99,
      unevenForce: 7845.32,
      unevenPressure: 1.56077e6,
      plateDiameter: 0.099945,
    },
    tolerance: { relative: 1e-5, reason: 'six digits' },
  },
  {
    name: 'three feet stand on any floor',
    source: arithmetic,
    inputs: { dryMass: 300, feet: 3, footDiameter: 0.05, allowed: 1e6 },
    outputs: { footForce: 980.665, unevenForce: 980.665 },
    tolerance: { relative: 1e-9, reason: 'exact figures' },
  },
];
