import type { SheetCase } from '../sheet-case.ts';
import { fluidsLibrary } from './sources.ts';

const source = { ...fluidsLibrary, place: 'documented examples of fittings', mark: 'read' } as const;
const exact = { relative: 1e-9, reason: 'whole numbers' };

export const fittingEquivalentCases: readonly SheetCase[] = [
  {
    name: 'fluids: K 6 in 0.3 m at a friction factor of 0.018 is 100 m',
    source,
    inputs: { coefficient: 6, bore: 0.3, frictionFactor: 0.018 },
    outputs: { length: 100 },
    tolerance: exact,
    notes: ['FITTING_FRICTION_FACTOR'],
  },
  {
    name: 'fluids: K 3.6 at 0.02 is 180 bores, 4.5 m of a bore of 25 mm',
    source,
    inputs: { coefficient: 3.6, bore: 0.025 },
    outputs: { length: 180 * 0.025 },
    tolerance: exact,
  },
];
