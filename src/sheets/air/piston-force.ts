import { choiceField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { bores, forces, supplyPressures } from './bounds.ts';
import { ringArea, rodProblems, roundArea } from './cylinder-areas.ts';
import { derived } from './sources.ts';

export type Direction = 'extend' | 'retract';
export const directions: readonly Direction[] = ['extend', 'retract'];

/** Area that drives a stroke and the one that it pushes out against, m2. */
export const drivenAreas = (
  bore: number,
  rod: number,
  direction: Direction,
): { readonly driven: number; readonly exhausting: number } =>
  direction === 'extend'
    ? { driven: roundArea(bore), exhausting: ringArea(bore, rod) }
    : { driven: ringArea(bore, rod), exhausting: roundArea(bore) };

/**
 * Gauge pressure at which a cylinder just holds its load.
 *
 * Method   p = ((F + F_s)/eta + p_b A_b)/A_d
 * Symbols  F    load           scalar  N
 *          F_s  spring         scalar  N
 *          eta  efficiency     scalar  1         share of the force that friction leaves
 *          p_b  backPressure   scalar  Pa gauge  on the side that exhausts
 *          A_d  driven         scalar  m2
 *          A_b  exhausting     scalar  m2
 * Returns  Pa gauge; below it the cylinder stalls
 * Cost     O(1)
 * Source   balance of forces; both sides are taken over the atmosphere, which drops out
 */
export const stallPressure = (
  load: number,
  spring: number,
  efficiency: number,
  backPressure: number,
  driven: number,
  exhausting: number,
): number => ((load + spring) / efficiency + backPressure * exhausting) / driven;

export interface PistonInputs {
  readonly direction: Direction;
  readonly bore: number;
  readonly rod: number;
  readonly backPressure: number;
  readonly efficiency: number;
  readonly spring: number;
  readonly load: number;
}

/** Fields that the sheets of piston forces share. */
export const pistonFields = {
  direction: choiceField<Direction>('\\text{direction}', directions, 'extend'),
  bore: numberField('length', 'D', bores),
  rod: numberField('length', 'd', { least: 0, most: 2, assumed: 0 }),
  backPressure: numberField('gaugePressure', 'p_b', { ...supplyPressures, assumed: 0 }),
  efficiency: numberField('ratio', '\\eta', { least: 0.05, most: 1, assumed: 0.9 }),
  spring: numberField('force', 'F_s', { ...forces, assumed: 0 }),
  load: numberField('force', 'F', forces),
} as const;

interface PistonForceInputs extends PistonInputs {
  readonly pressure: number;
}

const theoretical = (i: PistonForceInputs): number => {
  const { driven, exhausting } = drivenAreas(i.bore, i.rod, i.direction);
  return i.pressure * driven - i.backPressure * exhausting;
};
const left = (i: PistonForceInputs): number => i.efficiency * theoretical(i) - i.spring;

export const pistonForceSheet = defineSheet({
  id: 'air/piston-force',
  version: 1,
  inputs: { pressure: numberField('gaugePressure', 'p', supplyPressures), ...pistonFields },
  outputs: {
    force: numberField('force', 'F_t'),
    usableForce: numberField('force', 'F_u'),
    loadRatio: numberField('ratio', '\\lambda'),
    stallPressure: numberField('gaugePressure', 'p_s'),
  },
  formula: [
    'F_t = p A_d - p_b A_b, \\quad F_u = \\eta F_t - F_s, \\quad \\lambda = \\frac{F}{F_u}',
    'p_s = \\frac{(F + F_s)/\\eta + p_b A_b}{A_d}',
    'A_d = \\frac{\\pi}{4} D^2, \\ A_b = \\frac{\\pi}{4} (D^2 - d^2) \\ \\text{(extend)}, \\quad \\text{the other way round to retract}',
  ],
  limits: [
    { code: 'LOAD_RATIO_STALL', broken: (_, { loadRatio }) => loadRatio >= 1 },
    { code: 'LOAD_RATIO_HIGH', broken: (_, { loadRatio }) => loadRatio > 0.5 && loadRatio < 1 },
    { code: 'CYLINDER_FRICTION_SHARE', broken: () => true },
    { code: 'PISTON_LOWEST_PRESSURE', broken: () => true },
    { code: 'CAUTION_COMPRESSED_AIR', broken: () => true },
  ],
  sources: [
    derived,
    {
      title: 'Few guidelines for figuring pneumatic actuator load requirements, trade magazine',
      place: 'worked example and seal losses',
      mark: 'read',
    },
  ],
  check: (i) => {
    const rod = rodProblems(i.bore, i.rod);
    if (rod.length > 0) return rod;
    return left(i) > 0 ? [] : [{ code: 'PISTON_NO_FORCE', path: 'pressure', given: i.pressure }];
  },
  compute: (i: PistonForceInputs) => {
    const { driven, exhausting } = drivenAreas(i.bore, i.rod, i.direction);
    const usableForce = left(i);
    return {
      force: theoretical(i),
      usableForce,
      loadRatio: i.load / usableForce,
      stallPressure: stallPressure(i.load, i.spring, i.efficiency, i.backPressure, driven, exhausting),
    };
  },
});
