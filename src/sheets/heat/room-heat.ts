import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { heatFlows } from './bounds.ts';
import { arithmetic } from './sources.ts';

/** Air at 20 degC and sea level: kg/m3, and J/(kg K). */
const airDensity = 1.204;
const airHeat = 1006;

/**
 * Air that carries a heat away at a rise of its temperature.
 *
 * Method   q = P/(rho c dT)
 * Symbols  P   heat  scalar  W
 *          dT  rise  scalar  K  > 0
 * Returns  m3/s
 * Assumes  dry air of 20 degC at sea level, 1.204 kg/m3, 1006 J/(kg K); at 1 500 m it takes a fifth more
 * Cost     O(1)
 * Source   heat balance
 */
export const coolingAir = (heat: number, rise: number): number => heat / (airDensity * airHeat * rise);

interface RoomHeatInputs {
  readonly motorInput: number;
  readonly runningShare: number;
  readonly bath: number;
  readonly pipes: number;
  readonly warmBottles: number;
  readonly people: number;
  readonly rise: number;
}

/** Dry heat of one person at light work, W: 75 from memory of the ventilation trade. */
const perPerson = 75;

export const roomHeatSheet = defineSheet({
  id: 'heat/room-heat',
  version: 1,
  inputs: {
    motorInput: numberField('power', 'P_m', heatFlows),
    runningShare: numberField('ratio', 's', { least: 0, most: 1, assumed: 1 }),
    bath: numberField('heatFlow', 'P_b', { ...heatFlows, assumed: 0 }),
    pipes: numberField('heatFlow', 'P_p', { ...heatFlows, assumed: 0 }),
    warmBottles: numberField('heatFlow', 'P_w', { ...heatFlows, assumed: 0 }),
    people: numberField('count', 'n', { least: 0, most: 1000, assumed: 0 }),
    rise: numberField('temperatureDifference', '\\Delta T', { least: 0.5, most: 50, assumed: 8 }),
  },
  outputs: { heat: numberField('heatFlow', 'P'), airFlow: numberField('actualAirFlow', 'q') },
  formula: [
    'P = s P_m + P_b + P_p + P_w + n \\cdot 75\\ \\mathrm{W}, \\quad q = \\frac{P}{\\rho c\\, \\Delta T}',
  ],
  limits: [
    { code: 'ROOM_HEAT_MOTORS', broken: () => true },
    { code: 'ROOM_HEAT_NO_SUN', broken: () => true },
    { code: 'ROOM_HEAT_PEOPLE_MEMORY', broken: ({ people }) => people > 0 },
  ],
  sources: [arithmetic],
  compute: (i: RoomHeatInputs) => {
    const heat = i.runningShare * i.motorInput + i.bath + i.pipes + i.warmBottles + perPerson * i.people;
    return { heat, airFlow: coolingAir(heat, i.rise) };
  },
});
