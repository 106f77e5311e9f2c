import { numberField, weighedField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { expansions, productTemperatures, someVolumes } from './weighing-bounds.ts';
import { expansionDefinition } from './weighing-sources.ts';

const reference = 293.15;

/**
 * Capacity of a vessel at 20 degC, measured at another temperature.
 *
 * Method   V20 = V (1 - gamma (T - 293.15 K))
 * Symbols  V      volume       scalar  m3
 *          T      temperature  scalar  K
 *          gamma  expansion    scalar  1/K, cubic, of the vessel
 * Returns  m3
 * Assumes  a small step: the square of gamma times the step is left out
 * Cost     O(1)
 * Source   definition of cubic expansion
 */
export const vesselAt20 = (volume: number, temperature: number, expansion: number): number =>
  volume * (1 - expansion * (temperature - reference));

interface VesselInputs {
  readonly volume: number;
  readonly temperature: number;
  readonly expansion: number;
}

export const vesselAt20Sheet = defineSheet({
  id: 'contents/vessel-at-20',
  version: 1,
  inputs: {
    volume: weighedField('volume', 'V', someVolumes),
    temperature: numberField('temperature', 'T', productTemperatures),
    // soda-lime glass, three times 9e-6 in length
    expansion: numberField('cubicExpansion', '\\gamma', { ...expansions, assumed: 27e-6 }),
  },
  outputs: { capacity: weighedField('volume', 'V_{20}') },
  formula: ['V_{20} = V \\left( 1 - \\gamma (T - 293.15\\,\\mathrm{K}) \\right)'],
  limits: [{ code: 'VESSEL_NOT_PRODUCT', broken: () => true }],
  sources: [
    expansionDefinition,
    { title: 'expansion of soda-lime glass, 9e-6 1/K in length', place: 'not read', mark: 'memory' },
  ],
  compute: (i: VesselInputs) => ({ capacity: vesselAt20(i.volume, i.temperature, i.expansion) }),
});
