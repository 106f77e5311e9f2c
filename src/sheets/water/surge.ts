import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { densities, lengths, times, velocities } from './bounds.ts';
import { derived } from './sources.ts';

/**
 * Time in which a wave runs to the free surface and back.
 *
 * Method   t_2 = 2 L/a
 * Symbols  L  length     scalar  m    to the nearest free surface, vessel or large header
 *          a  waveSpeed  scalar  m/s  by `waveSpeed`
 * Returns  time, s
 * Cost     O(1)
 * Source   definition
 */
export const criticalTime = (length: number, waveSpeed: number): number => (2 * length) / waveSpeed;

/**
 * Rise of pressure when the flow in a pipe is stopped.
 *
 * Method   t_c <= 2L/a: rho a dv (Joukowsky);  t_c > 2L/a: 2 rho L dv/t_c, the flow cut linearly
 * Symbols  rho  density         scalar  kg/m3
 *          a    waveSpeed       scalar  m/s
 *          L    length          scalar  m
 *          dv   velocityChange  scalar  m/s   in the common pipe: valves that close together add up
 *          t_c  closingTime     scalar  s     >= 0
 * Returns  pressure difference, Pa; as much below as above
 * Assumes  no friction; flow cut linearly: a valve that bites in the last tenth of its stroke has a tenth of its time
 * Cost     O(1)
 * Source   Joukowsky; Michaud's slow closure
 */
export const surgePressure = (
  density: number,
  waveSpeed: number,
  length: number,
  velocityChange: number,
  closingTime: number,
): number =>
  closingTime <= criticalTime(length, waveSpeed)
    ? density * waveSpeed * velocityChange
    : (2 * density * length * velocityChange) / closingTime;

interface SurgeInputs {
  readonly density: number;
  readonly waveSpeed: number;
  readonly length: number;
  readonly velocityChange: number;
  readonly closingTime: number;
  readonly pressure: number;
}

/** Gauge pressure at which the column of cold water parts: nearly a vacuum. */
const parting = -99_000;

export const surgeSheet = defineSheet({
  id: 'water/surge',
  version: 1,
  inputs: {
    density: numberField('density', '\\rho', densities),
    waveSpeed: numberField('velocity', 'a', { least: 1, most: 3000 }),
    length: numberField('length', 'L', lengths),
    velocityChange: numberField('velocity', '\\Delta v', velocities),
    closingTime: numberField('time', 't_c', times),
    pressure: numberField('gaugePressure', 'p', { least: -101325, most: 1e9, assumed: 0 }),
  },
  outputs: {
    criticalTime: numberField('time', 't_2'),
    joukowsky: numberField('pressureDifference', '\\Delta p_J'),
    rise: numberField('pressureDifference', '\\Delta p'),
    highest: numberField('gaugePressure', 'p_{\\max}'),
    lowest: numberField('gaugePressure', 'p_{\\min}'),
  },
  formula: [
    't_2 = \\frac{2 L}{a}, \\quad \\Delta p_J = \\rho a \\Delta v',
    '\\Delta p = \\Delta p_J \\ (t_c \\le t_2), \\quad \\Delta p = \\frac{2 \\rho L \\Delta v}{t_c} \\ (t_c > t_2)',
    'p_{\\max} = p + \\Delta p, \\quad p_{\\min} = p - \\Delta p',
  ],
  limits: [
    { code: 'SURGE_COLUMN_PARTS', broken: (_, { lowest }) => lowest < parting },
    { code: 'PRESSURE_CAUTION', broken: () => true },
  ],
  sources: [derived],
  compute: ({ density, waveSpeed, length, velocityChange, closingTime, pressure }: SurgeInputs) => {
    const rise = surgePressure(density, waveSpeed, length, velocityChange, closingTime);
    return {
      criticalTime: criticalTime(length, waveSpeed),
      joukowsky: surgePressure(density, waveSpeed, length, velocityChange, 0),
      rise,
      highest: pressure + rise,
      lowest: pressure - rise,
    };
  },
});
