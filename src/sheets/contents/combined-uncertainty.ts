import type { Problem } from '../../quantity/problem.ts';
import { studentQuantile } from '../../statistics/student.ts';
import { listField, numberField, weighedField, weighedList } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { listLengths } from '../list-lengths.ts';
import { chances, spreadsOrNone } from './fill-bounds.ts';
import { guideCombined } from './fill-sources.ts';

interface CombinedInputs {
  readonly contributions: readonly number[];
  readonly dofs: readonly number[];
  readonly confidence: number;
}

interface CombinedOutputs {
  readonly combined: number;
  readonly dof: number;
  readonly factor: number;
  readonly expanded: number;
  readonly shares: readonly number[];
}

/**
 * Combined and expanded uncertainty of a volume from its contributions.
 *
 * Method   u^2 = sum u_i^2; nu = u^4/sum(u_i^4/nu_i) (Welch, Satterthwaite); U = t u
 * Symbols  contributions  u_i   |sensitivity| times standard uncertainty  m3
 *          dofs           nu_i  degrees of freedom of each; 1e9 where it is as good as known
 *          confidence     P     two-sided
 * Returns  u, nu, t, U and the share of each in u^2
 * Assumes  independent contributions; first order
 * Cost     O(contributions)
 * Source   JCGM 100:2008, 5.1.2 and G.4
 */
export const combinedUncertainty = ({ contributions, dofs, confidence }: CombinedInputs): CombinedOutputs => {
  const combined = Math.hypot(...contributions);
  const shares = contributions.map((part) => (part / combined) ** 2);
  const dof = 1 / shares.reduce((sum, share, i) => sum + share ** 2 / dofs[i]!, 0);
  const factor = studentQuantile(0.5 * (1 + confidence), dof);
  return { combined, dof, factor, expanded: factor * combined, shares };
};

const budgetProblems = ({ contributions, dofs }: CombinedInputs): readonly Problem[] => {
  const lengths = listLengths({ contributions, dofs });
  if (lengths.length > 0) return lengths;
  return contributions.some((part) => part > 0) ? [] : [{ code: 'BUDGET_EMPTY', path: 'contributions' }];
};

export const combinedUncertaintySheet = defineSheet<CombinedInputs, CombinedOutputs>({
  id: 'contents/combined-uncertainty',
  version: 1,
  inputs: {
    contributions: weighedList('volume', 'u_i', spreadsOrNone),
    dofs: listField('count', '\\nu_i', { least: 1, most: 1e9 }),
    confidence: numberField('ratio', 'P', { ...chances, assumed: 0.95 }),
  },
  outputs: {
    combined: weighedField('volume', 'u'),
    dof: numberField('count', '\\nu'),
    factor: numberField('ratio', 'k'),
    expanded: weighedField('volume', 'U'),
    shares: listField('ratio', 'u_i^2/u^2'),
  },
  formula: [
    'u = \\sqrt{\\textstyle\\sum u_i^2}, \\quad \\nu = \\frac{u^4}{\\sum u_i^4/\\nu_i}, \\quad k = t_{(1+P)/2,\\,\\nu}, \\quad U = k u',
  ],
  limits: [{ code: 'BUDGET_FEW_DEGREES', broken: (_, { dof }) => dof < 10 }],
  sources: [guideCombined],
  check: budgetProblems,
  compute: combinedUncertainty,
});
