import type { Problem } from '../../quantity/problem.ts';
import { listField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { listLengths } from '../list-lengths.ts';
import { combinedUncertainty } from './combined-uncertainty.ts';
import { chances } from './fill-bounds.ts';
import { guideCombined } from './fill-sources.ts';

interface TimeIntervalInputs {
  readonly time: number;
  readonly contributions: readonly number[];
  readonly dofs: readonly number[];
  readonly confidence: number;
}

interface TimeIntervalOutputs {
  readonly combined: number;
  readonly dof: number;
  readonly factor: number;
  readonly lower: number;
  readonly upper: number;
  readonly shares: readonly number[];
}

/** A millisecond of a long fill to more than any fill takes. */
const fillTimes = { above: 0, most: 36_000 } as const;
const timeParts = { least: 0, most: 3600 } as const;

/**
 * Interval of a time from its contributions, even on a scale of ratios: a time is never below nothing.
 *
 * Method   u^2 = sum u_i^2; nu after Welch and Satterthwaite; from T exp(-t u/T) to T exp(t u/T)
 * Symbols  time           T     s
 *          contributions  u_i   |sensitivity| times standard uncertainty  s
 *          dofs           nu_i  degrees of freedom of each; 1e9 where it is as good as known
 *          confidence     P     two-sided
 * Returns  u, nu, t, both ends and the share of each contribution in u^2
 * Assumes  independent contributions; first order
 * Cost     O(contributions)
 * Source   JCGM 100:2008, 5.1.2 and G.4, put on the logarithm of the time
 */
const timeInterval = ({ time, ...parts }: TimeIntervalInputs): TimeIntervalOutputs => {
  const { combined, dof, factor, shares } = combinedUncertainty(parts);
  const ratio = Math.exp((factor * combined) / time);
  return { combined, dof, factor, lower: time / ratio, upper: time * ratio, shares };
};

const intervalProblems = ({ contributions, dofs }: TimeIntervalInputs): readonly Problem[] => {
  const lengths = listLengths({ contributions, dofs });
  if (lengths.length > 0) return lengths;
  return contributions.some((part) => part > 0) ? [] : [{ code: 'BUDGET_EMPTY', path: 'contributions' }];
};

export const timeIntervalSheet = defineSheet<TimeIntervalInputs, TimeIntervalOutputs>({
  id: 'contents/time-interval',
  version: 1,
  inputs: {
    time: numberField('time', 'T', fillTimes),
    contributions: listField('time', 'u_i', timeParts),
    dofs: listField('count', '\\nu_i', { least: 1, most: 1e9 }),
    confidence: numberField('ratio', 'P', { ...chances, assumed: 0.95 }),
  },
  outputs: {
    combined: numberField('time', 'u'),
    dof: numberField('count', '\\nu'),
    factor: numberField('ratio', 'k'),
    lower: numberField('time', 'T_-'),
    upper: numberField('time', 'T_+'),
    shares: listField('ratio', 'u_i^2/u^2'),
  },
  formula: [
    'u = \\sqrt{\\textstyle\\sum u_i^2}, \\quad \\nu = \\frac{u^4}{\\sum u_i^4/\\nu_i}, \\quad k = t_{(1+P)/2,\\,\\nu}, \\quad T_\\mp = T \\exp(\\mp k u / T)',
  ],
  limits: [{ code: 'BUDGET_FEW_DEGREES', broken: (_, { dof }) => dof < 10 }],
  sources: [guideCombined],
  check: intervalProblems,
  compute: timeInterval,
});
