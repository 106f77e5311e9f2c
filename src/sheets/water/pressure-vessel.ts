import type { Si } from '../../quantity/kinds.ts';
import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { absolutePressures, volumes } from './bounds.ts';
import { derived } from './sources.ts';

/**
 * Volume that a pressure vessel gives between two pressures.
 *
 * Method   V = V_T p_0 (1/p_1 - 1/p_2)
 * Symbols  V_T  vessel    scalar  m3
 *          p_0  preCharge scalar  Pa absolute  at most p_1
 *          p_1  lowest    scalar  Pa absolute
 *          p_2  highest   scalar  Pa absolute  at least p_1
 * Returns  volume, m3
 * Assumes  isothermal ideal gas; a fast draw cools it and gives less
 * Cost     O(1)
 * Source   Boyle's law
 */
export const vesselDraw = (
  vessel: number,
  preCharge: Si<'absolutePressure'>,
  lowest: Si<'absolutePressure'>,
  highest: Si<'absolutePressure'>,
): number => vessel * preCharge * (1 / lowest - 1 / highest);

interface PressureVesselInputs {
  readonly vessel: number;
  readonly preCharge: Si<'absolutePressure'>;
  readonly lowest: Si<'absolutePressure'>;
  readonly highest: Si<'absolutePressure'>;
}

export const pressureVesselSheet = defineSheet({
  id: 'water/pressure-vessel',
  version: 1,
  inputs: {
    vessel: numberField('volume', 'V_T', volumes),
    preCharge: numberField('absolutePressure', 'p_0', absolutePressures),
    lowest: numberField('absolutePressure', 'p_1', { least: 1000, most: 1e9 }),
    highest: numberField('absolutePressure', 'p_2', { least: 1000, most: 1e9 }),
  },
  outputs: { draw: numberField('volume', 'V') },
  formula: ['V = V_T\\, p_0 \\left( \\frac{1}{p_1} - \\frac{1}{p_2} \\right)'],
  limits: [{ code: 'PRESSURE_CAUTION', broken: () => true }],
  sources: [derived],
  check: ({ preCharge, lowest, highest }) => [
    ...(preCharge > lowest
      ? [{ code: 'VESSEL_PRE_CHARGE', path: 'preCharge', given: preCharge, allowed: `<= ${lowest}` }]
      : []),
    ...(highest < lowest
      ? [{ code: 'VESSEL_BAND', path: 'highest', given: highest, allowed: `>= ${lowest}` }]
      : []),
  ],
  compute: (i: PressureVesselInputs) => ({ draw: vesselDraw(i.vessel, i.preCharge, i.lowest, i.highest) }),
});
