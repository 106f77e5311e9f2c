import { choiceField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import {
  bores,
  intervals,
  roomTemperatures,
  standardAtmospheres,
  strokes,
  supplyPressures,
  volumes,
} from './bounds.ts';
import { ringArea, rodProblems, roundArea } from './cylinder-areas.ts';
import { normalPressure, normalTemperature } from './dry-air.ts';
import { cylinderArticle, derived } from './sources.ts';

/**
 * Free air that one stroke of a cylinder takes from the supply.
 *
 * Method   V_n = (A s p + V_d (p - p_a))/p_n T_n/T
 * Symbols  A    area         scalar  m2  driven by the stroke
 *          s    stroke       scalar  m
 *          V_d  deadVolume   scalar  m3  tube from the valve, end clearance, passages
 *          p    pressure     scalar  Pa absolute
 *          p_a  atmosphere   scalar  Pa absolute
 *          T    temperature  scalar  K
 * Returns  volume, m3 at 100 kPa, 293.15 K
 * Assumes  the chamber reaches the full pressure before it is vented, else it takes less; the swept volume is
 *          filled from nothing, the dead volume holds the atmosphere already
 * Cost     O(1)
 * Source   mass balance of the chamber
 */
export const strokeAir = (
  area: number,
  stroke: number,
  deadVolume: number,
  pressure: number,
  atmosphere: number,
  temperature: number,
): number =>
  ((area * stroke * pressure + deadVolume * (pressure - atmosphere)) / normalPressure) *
  (normalTemperature / temperature);

export type Acting = 'double' | 'single';

interface CylinderDemandInputs {
  readonly acting: Acting;
  readonly bore: number;
  readonly rod: number;
  readonly stroke: number;
  readonly cyclesPerIndex: number;
  readonly deadExtend: number;
  readonly deadRetract: number;
  readonly pressure: number;
  readonly atmosphere: number;
  readonly temperature: number;
  readonly indexPeriod: number;
}

export const cylinderDemandSheet = defineSheet({
  id: 'air/cylinder-demand',
  version: 1,
  inputs: {
    acting: choiceField<Acting>('\\text{acting}', ['double', 'single'], 'double'),
    bore: numberField('length', 'D', bores),
    rod: numberField('length', 'd', { least: 0, most: 2 }),
    stroke: numberField('length', 's', strokes),
    cyclesPerIndex: numberField('count', 'n', { least: 0, most: 1000, assumed: 1 }),
    deadExtend: numberField('volume', 'V_{d,1}', { ...volumes, assumed: 0 }),
    deadRetract: numberField('volume', 'V_{d,2}', { ...volumes, assumed: 0 }),
    pressure: numberField('gaugePressure', 'p_g', supplyPressures),
    atmosphere: numberField('absolutePressure', 'p_a', standardAtmospheres),
    temperature: numberField('temperature', 'T', roomTemperatures),
    indexPeriod: numberField('time', 't_i', intervals),
  },
  outputs: {
    extendDraw: numberField('normalAirVolume', 'V_1'),
    retractDraw: numberField('normalAirVolume', 'V_2'),
    perIndex: numberField('normalAirVolume', 'V_i'),
    averageFlow: numberField('normalAirFlow', 'q'),
    perIndexWithoutRod: numberField('normalAirVolume', 'V_{i,0}'),
  },
  formula: [
    'V_1 = \\frac{A s p + V_{d,1} (p - p_a)}{p_n} \\frac{T_n}{T}, \\quad V_2 = \\frac{(A - a) s p + V_{d,2} (p - p_a)}{p_n} \\frac{T_n}{T}, \\quad p = p_g + p_a',
    'A = \\frac{\\pi D^2}{4}, \\quad a = \\frac{\\pi d^2}{4}, \\quad V_2 = 0 \\ \\text{(single acting)}',
    'V_i = n (V_1 + V_2), \\quad q = \\frac{V_i}{t_i}',
  ],
  limits: [
    {
      code: 'CYLINDER_NO_TUBES',
      broken: ({ deadExtend, deadRetract, acting }) =>
        deadExtend === 0 || (acting === 'double' && deadRetract === 0),
    },
    {
      code: 'CYLINDER_ROD_SHORTCUT',
      broken: (_, { perIndex, perIndexWithoutRod }) => perIndexWithoutRod > 1.001 * perIndex,
      parts: (_, { perIndex, perIndexWithoutRod }) => ({
        share: (100 * (perIndexWithoutRod / perIndex - 1)).toFixed(1),
      }),
    },
    { code: 'AIR_REFERENCE', broken: () => true },
    { code: 'CAUTION_COMPRESSED_AIR', broken: () => true },
  ],
  sources: [derived, cylinderArticle],
  check: ({ bore, rod }) => rodProblems(bore, rod),
  compute: (i: CylinderDemandInputs) => {
    const p = i.pressure + i.atmosphere;
    const air = (area: number, dead: number): number =>
      strokeAir(area, i.stroke, dead, p, i.atmosphere, i.temperature);
    const double = i.acting === 'double';
    const extendDraw = air(roundArea(i.bore), i.deadExtend);
    const retractDraw = double ? air(ringArea(i.bore, i.rod), i.deadRetract) : 0;
    const perIndex = i.cyclesPerIndex * (extendDraw + retractDraw);
    return {
      extendDraw,
      retractDraw,
      perIndex,
      averageFlow: perIndex / i.indexPeriod,
      perIndexWithoutRod:
        i.cyclesPerIndex * (extendDraw + (double ? air(roundArea(i.bore), i.deadRetract) : 0)),
    };
  },
});
