import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { rodProblems } from './cylinder-areas.ts';
import { drivenAreas, type PistonInputs, pistonFields, stallPressure } from './piston-force.ts';
import { derived } from './sources.ts';

interface LeastPressureInputs extends PistonInputs {
  readonly loadRatio: number;
}

/** The pressure at which the load ratio is the one wanted: `stallPressure` of a load that much heavier. */
export const leastPressureSheet = defineSheet({
  id: 'air/least-pressure',
  version: 1,
  inputs: {
    ...pistonFields,
    // guide, memory: 0.5 for a load that moves, 0.7 slow or held, 0.85 clamping
    loadRatio: numberField('ratio', '\\lambda', { least: 0.05, most: 1, assumed: 0.5 }),
  },
  outputs: {
    leastPressure: numberField('gaugePressure', 'p'),
    stallPressure: numberField('gaugePressure', 'p_s'),
  },
  formula: ['p = \\frac{(F/\\lambda + F_s)/\\eta + p_b A_b}{A_d}, \\quad p_s = p(\\lambda = 1)'],
  limits: [
    { code: 'LOAD_RATIO_GUIDE', broken: () => true },
    { code: 'CYLINDER_FRICTION_SHARE', broken: () => true },
    { code: 'PISTON_LOWEST_PRESSURE', broken: () => true },
    { code: 'VALVE_PILOT_PRESSURE', broken: (_, { leastPressure }) => leastPressure < 3e5 },
    { code: 'CAUTION_COMPRESSED_AIR', broken: () => true },
  ],
  sources: [derived],
  check: ({ bore, rod }) => rodProblems(bore, rod),
  compute: (i: LeastPressureInputs) => {
    const { driven, exhausting } = drivenAreas(i.bore, i.rod, i.direction);
    const at = (load: number): number =>
      stallPressure(load, i.spring, i.efficiency, i.backPressure, driven, exhausting);
    return { leastPressure: at(i.load / i.loadRatio), stallPressure: at(i.load) };
  },
});
