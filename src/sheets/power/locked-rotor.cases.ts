import type { SheetCase } from '../sheet-case.ts';
import { horsepower } from './horsepower.ts';
import { lockedRotorTable } from './locked-rotor-letters.ts';

const worked = { ...lockedRotorTable, mark: 'computed', place: 'letters read, arithmetic apart' } as const;
const printed = { absolute: 0.1, reason: 'printed to a tenth of an ampere' } as const;

export const lockedRotorCases: readonly SheetCase[] = [
  {
    name: '10 hp, 460 V, code H: 79.1 to 89.0 A',
    source: worked,
    inputs: { power: 10 * horsepower, voltage: 460, letter: 'H' },
    outputs: { lowest: 79.1, highest: 89 },
    tolerance: printed,
    notes: ['CAUTION_ELECTRICAL'],
  },
  {
    name: '25 hp, 208 V, code G: 388.6 to 436.5 A',
    source: worked,
    inputs: { power: 25 * horsepower, voltage: 208, letter: 'G' },
    outputs: { lowest: 388.6, highest: 436.5 },
    tolerance: printed,
  },
];
