import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { airVelocities, areas, humidities, roomTemperatures, waterTemperatures } from './bounds.ts';
import { always } from './caution.ts';
import { boilingPressure, latentHeat } from './if97.ts';
import { carrier, if97 } from './sources.ts';

/** W/(m2 Pa) in still air, and by each m/s of it. */
const still = 0.089;
const moving = 0.0782;

/**
 * Heat that evaporation takes from an open surface.
 *
 * Method   q = A (0.089 + 0.0782 V)(p_w - p_a), p in Pa and q in W, which is kPa and kW
 * Symbols  A    surface        scalar  m2
 *          V    velocity       scalar  m/s  of the air along it
 *          p_w  waterVapour    scalar  Pa   of saturation at the water's temperature
 *          p_a  roomVapour     scalar  Pa   in the room
 * Returns  W; 0 where the room is damper than the water's surface
 * Assumes  quiet water; good to about 20 %, and articles call the form inaccurate
 * Cost     O(1)
 * Source   Carrier form (memory); 81 to 100 % of the column of an open tank table
 */
export const evaporationHeat = (
  surface: number,
  velocity: number,
  waterVapour: number,
  roomVapour: number,
): number => surface * (still + moving * velocity) * Math.max(0, waterVapour - roomVapour);

interface OpenTankEvaporationInputs {
  readonly bath: number;
  readonly surface: number;
  readonly room: number;
  readonly relativeHumidity: number;
  readonly velocity: number;
}

export const openTankEvaporationSheet = defineSheet({
  id: 'heat/open-tank-evaporation',
  version: 1,
  inputs: {
    bath: numberField('temperature', 'T_w', waterTemperatures),
    surface: numberField('area', 'A', areas),
    // vapour over water, not ice: the saturation line starts at the triple point
    room: numberField('temperature', 'T_a', { ...roomTemperatures, least: 273.16 }),
    relativeHumidity: numberField('relativeHumidity', '\\varphi', humidities),
    velocity: numberField('velocity', 'V', { ...airVelocities, assumed: 0.15 }),
  },
  outputs: {
    heat: numberField('heatFlow', 'P'),
    low: numberField('heatFlow', 'P_-'),
    high: numberField('heatFlow', 'P_+'),
    evaporated: numberField('massFlow', 'W'),
  },
  formula: [
    'P = A (0.089 + 0.0782\\, V)(p_s(T_w) - \\varphi\\, p_s(T_a)), \\quad P_\\pm = (1 \\pm 0.2) P',
    'W = \\frac{P}{h_{fg}(T_w)}',
  ],
  limits: [
    always('OPEN_TANK_ROUGH'),
    always('EVAPORATION_TO_ROOM'),
    { code: 'EVAPORATION_NONE', broken: (_, { heat }) => heat === 0 },
  ],
  sources: [carrier, if97],
  compute: (i: OpenTankEvaporationInputs) => {
    const heat = evaporationHeat(
      i.surface,
      i.velocity,
      boilingPressure(i.bath),
      i.relativeHumidity * boilingPressure(i.room),
    );
    return { heat, low: 0.8 * heat, high: 1.2 * heat, evaporated: heat / latentHeat(i.bath) };
  },
});
