import { airReferences } from './air-reference.ts';
import { type Si, si } from './kinds.ts';

// The state in which `normalAirFlow` and `normalAirVolume` are kept: the first of the list, 100 kPa and 20 degC.
const kept = airReferences[0] as (typeof airReferences)[number];

/**
 * Flow of air at its own pressure and temperature, from the flow at the reference state.
 *
 * Method   q = qn (pn / p) (T / Tn)
 * Symbols  qn  flow         scalar  m3/s at 100 kPa, 293.15 K, as every normal-air unit is kept
 *          p   pressure     scalar  Pa absolute  > 0
 *          T   temperature  scalar  K            > 0
 * Returns  flow             scalar  m3/s
 * Assumes  ideal gas; humidity left out
 * Cost     O(1)
 * Source   ideal gas law
 */
export const normalToActual = (
  flow: Si<'normalAirFlow'>,
  pressure: Si<'absolutePressure'>,
  temperature: Si<'temperature'>,
): Si<'actualAirFlow'> =>
  si('actualAirFlow', flow * (kept.pressure / pressure) * (temperature / kept.temperature));

/** The other way: flow at the reference state, from air as it passes. */
export const actualToNormal = (
  flow: Si<'actualAirFlow'>,
  pressure: Si<'absolutePressure'>,
  temperature: Si<'temperature'>,
): Si<'normalAirFlow'> =>
  si('normalAirFlow', flow * (pressure / kept.pressure) * (kept.temperature / temperature));
