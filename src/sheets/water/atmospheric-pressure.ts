import { type Si, si } from '../../quantity/kinds.ts';
import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';

/**
 * Mean pressure of the air at an altitude.
 *
 * Method   p = 101325 (1 - 2.25577e-5 z)^5.25588
 * Symbols  z  altitude  scalar  m  over the sea
 * Returns  absolute pressure, Pa
 * Assumes  standard atmosphere; weather moves it by about 3 %
 * Cost     O(1)
 * Source   ISO 2533 standard atmosphere, troposphere
 */
export const atmosphericPressure = (altitude: number): Si<'absolutePressure'> =>
  si('absolutePressure', 101325 * (1 - 2.25577e-5 * altitude) ** 5.25588);

export const atmosphericPressureSheet = defineSheet({
  id: 'water/atmospheric-pressure',
  version: 1,
  inputs: { altitude: numberField('length', 'z', { least: -1000, most: 11000 }) },
  outputs: { pressure: numberField('absolutePressure', 'p') },
  formula: ['p = 101325 \\left( 1 - 2.25577 \\times 10^{-5} z \\right)^{5.25588}'],
  limits: [],
  sources: [{ title: 'ISO 2533, standard atmosphere', place: 'troposphere', mark: 'memory' }],
  compute: ({ altitude }: { readonly altitude: number }) => ({ pressure: atmosphericPressure(altitude) }),
});
