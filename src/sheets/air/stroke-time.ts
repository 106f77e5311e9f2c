import { brentRoot } from '../brent-root.ts';
import { choiceField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { criticalRatios, forces, roomTemperatures, standardAtmospheres, supplyPressures } from './bounds.ts';
import { rodProblems } from './cylinder-areas.ts';
import { normalPressure, normalTemperature } from './dry-air.ts';
import { adiabaticIndex } from './filling-time.ts';
import { type Direction, directions, drivenAreas } from './piston-force.ts';
import { iso6358, twoSolutions } from './sources.ts';
import { netForce, type Stroke, strokeTimes } from './stroke-motion.ts';

/** Pressure ratio over which a supply of C/A = k0 feeds a speed: (r k)^2 + ((r - b)/(1 - b))^2 = 1, k = v/k0. */
const feedRatio = (k: number, b: number): number => {
  if (k >= 1 / b) return 1 / k;
  const g = 1 / ((1 - b) * (1 - b));
  const square = k * k + g;
  return (g * b + Math.sqrt(g * g * b * b - square * (g * b * b - 1))) / square;
};

/**
 * Speed at which a cylinder runs when it no longer accelerates.
 *
 * Method   v = C_s p_s psi(p_d/p_s) p_n/(A_d p_d) = C_e p_n psi(p_a/p_b)/A_b and forces in balance, one root in v;
 *          where force is left at v = C_e p_n/A_b the exhaust is choked and v is that
 * Symbols  s  stroke  `Stroke`
 * Returns  m/s; 0 where it stalls
 * Cost     O(1), about ten evaluations
 * Source   ISO 6358 on both sides, balance of forces
 */
export const terminalSpeed = (s: Stroke): number => {
  if ((s.supply - s.atmosphere) * s.driven <= s.resistance) return 0;
  const choked = (s.exhaustConductance * normalPressure) / s.exhausting;
  const feed = (s.supplyConductance * normalPressure) / s.driven;
  const left = (v: number): number => {
    const pd = s.supply * feedRatio(v / feed, s.supplyRatio);
    const psi = Math.min(1, v / choked);
    const b = s.exhaustRatio;
    const pb = s.atmosphere / (b + (1 - b) * Math.sqrt((1 - psi) * (1 + psi)));
    return netForce(s, pd, pb);
  };
  return left(choked) >= 0 ? choked : brentRoot(left, 0, choked);
};

interface StrokeTimeInputs {
  readonly direction: Direction;
  readonly bore: number;
  readonly rod: number;
  readonly stroke: number;
  readonly pressure: number;
  readonly atmosphere: number;
  readonly temperature: number;
  readonly load: number;
  readonly friction: number;
  readonly mass: number;
  readonly supplyConductance: number;
  readonly supplyRatio: number;
  readonly exhaustConductance: number;
  readonly exhaustRatio: number;
  readonly deadDriven: number;
  readonly deadExhausting: number;
}

/** The stroke as the motion takes it. */
export const strokeOf = (i: StrokeTimeInputs): Stroke => {
  const { driven, exhausting } = drivenAreas(i.bore, i.rod, i.direction);
  // C sqrt(T_n/T) passes normal air, which takes T/T_n of its volume in the chamber
  const warm = Math.sqrt(i.temperature / normalTemperature);
  return {
    driven,
    exhausting,
    stroke: i.stroke,
    deadDriven: i.deadDriven,
    deadExhausting: i.deadExhausting,
    supplyConductance: i.supplyConductance * warm,
    supplyRatio: i.supplyRatio,
    exhaustConductance: i.exhaustConductance * warm,
    exhaustRatio: i.exhaustRatio,
    supply: i.pressure + i.atmosphere,
    atmosphere: i.atmosphere,
    resistance: i.load + i.friction,
    mass: i.mass,
  };
};

const componentConductances = { least: 1e-10, most: 1e-5 } as const;
const deadVolumes = { least: 1e-7, most: 1 } as const;

export const strokeTimeSheet = defineSheet({
  id: 'air/stroke-time',
  version: 1,
  inputs: {
    direction: choiceField<Direction>('\\text{direction}', directions, 'extend'),
    bore: numberField('length', 'D', { least: 0.004, most: 0.5 }),
    rod: numberField('length', 'd', { least: 0, most: 0.5, assumed: 0 }),
    stroke: numberField('length', 's', { least: 0.001, most: 5 }),
    pressure: numberField('gaugePressure', 'p', { ...supplyPressures, most: 2e6 }),
    atmosphere: numberField('absolutePressure', 'p_a', standardAtmospheres),
    temperature: numberField('temperature', 'T', roomTemperatures),
    load: numberField('force', 'F', forces),
    friction: numberField('force', 'F_f', forces),
    mass: numberField('mass', 'M', { least: 0.01, most: 1e5 }),
    supplyConductance: numberField('sonicConductance', 'C_s', componentConductances),
    supplyRatio: numberField('ratio', 'b_s', criticalRatios),
    exhaustConductance: numberField('sonicConductance', 'C_e', componentConductances),
    exhaustRatio: numberField('ratio', 'b_e', criticalRatios),
    deadDriven: numberField('volume', 'V_d', deadVolumes),
    deadExhausting: numberField('volume', 'V_b', deadVolumes),
  },
  outputs: {
    longest: numberField('time', 't'),
    shortest: numberField('time', 't_a'),
    breakaway: numberField('time', 't_0'),
    terminalSpeed: numberField('velocity', 'v'),
    loadRatio: numberField('ratio', '\\lambda'),
    stallPressure: numberField('gaugePressure', 'p_s'),
  },
  formula: [
    '\\dot p_d = n \\frac{q_s p_n - p_d A_d v}{V_d + A_d x}, \\quad \\dot p_b = n \\frac{p_b A_b v - q_e p_n}{V_b + A_b (s - x)}',
    'M \\dot v = p_d A_d - p_b A_b - p_a (A_d - A_b) - F - F_f',
    '\\lambda = \\frac{F}{p A_d - F_f}, \\quad p_s = \\frac{F + F_f}{A_d}',
  ],
  limits: [
    { code: 'LOAD_RATIO_HIGH', broken: (_, { loadRatio }) => loadRatio > 0.5 && loadRatio < 1 },
    { code: 'STROKE_NO_CUSHION', broken: () => true },
    {
      code: 'RESTRICTION_NOZZLE',
      broken: ({ supplyRatio, exhaustRatio }) => Math.max(supplyRatio, exhaustRatio) > 0.5,
    },
    { code: 'VALVE_PILOT_PRESSURE', broken: ({ pressure }) => pressure < 3e5 },
    { code: 'CAUTION_COMPRESSED_AIR', broken: () => true },
  ],
  sources: [iso6358, twoSolutions],
  check: (i) => {
    const rod = rodProblems(i.bore, i.rod);
    if (rod.length > 0) return rod;
    const { driven } = drivenAreas(i.bore, i.rod, i.direction);
    const stall = (i.load + i.friction) / driven;
    if (i.pressure > stall) return [];
    // the sentence is read in both systems of units
    const parts = { bar: (stall / 1e5).toFixed(2), psi: (stall / 6894.757).toFixed(1) };
    return [{ code: 'STROKE_STALLS', path: 'pressure', given: i.pressure, allowed: `> ${stall}`, parts }];
  },
  compute: (i: StrokeTimeInputs) => {
    const stroke = strokeOf(i);
    const slow = strokeTimes(stroke, 1);
    const fast = strokeTimes(stroke, adiabaticIndex);
    return {
      longest: slow?.total ?? Number.NaN,
      shortest: fast?.total ?? Number.NaN,
      breakaway: slow?.breakaway ?? Number.NaN,
      terminalSpeed: terminalSpeed(stroke),
      loadRatio: i.load / (i.pressure * stroke.driven - i.friction),
      stallPressure: (i.load + i.friction) / stroke.driven,
    };
  },
});
