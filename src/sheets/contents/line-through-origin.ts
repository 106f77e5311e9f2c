import { leastSquares } from '../../statistics/least-squares.ts';
import { listField, numberField, weighedField, weighedList } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { listLengths } from '../list-lengths.ts';
import { fillVolumes, presetCounts } from './fill-bounds.ts';
import { leastSquaresTheory } from './fill-sources.ts';

interface OriginLineInputs {
  readonly counts: readonly number[];
  readonly volumes: readonly number[];
}

interface OriginLineOutputs {
  readonly perCount: number;
  readonly uncertainty: number;
  readonly scatter: number;
  readonly explained: number;
}

/**
 * One factor of volume over count, as if nothing passed after the count.
 *
 * Method   least squares of V = b N; share explained counted from zero, not from the mean
 * Symbols  counts   N_i
 *          volumes  V_i  m3, not all zero
 * Returns  volume of one count, its standard uncertainty, scatter, uncentred R^2
 * Cost     O(fills)
 * Source   NIST StRD, NoInt1, for the convention of R^2
 */
const lineThroughOrigin = ({ counts, volumes }: OriginLineInputs): OriginLineOutputs => {
  const fit = leastSquares(
    counts.map((n) => [n]),
    volumes,
  );
  const variance = fit.residualVariance ?? 0;
  const whole = volumes.reduce((sum, v) => sum + v * v, 0);
  return {
    perCount: fit.coefficients[0]!,
    uncertainty: Math.sqrt(variance * fit.covarianceUnit[0]![0]!),
    scatter: Math.sqrt(variance),
    explained: 1 - (variance * fit.dof) / whole,
  };
};

export const lineThroughOriginSheet = defineSheet<OriginLineInputs, OriginLineOutputs>({
  id: 'contents/line-through-origin',
  version: 1,
  inputs: {
    counts: listField('count', 'N_i', { ...presetCounts, fewest: 2 }),
    volumes: weighedList('volume', 'V_i', { ...fillVolumes, fewest: 2 }),
  },
  outputs: {
    perCount: weighedField('volume', 'b'),
    uncertainty: weighedField('volume', 'u(b)'),
    scatter: weighedField('volume', 's'),
    explained: numberField('ratio', 'R^2'),
  },
  formula: [
    'b = \\frac{\\sum N_i V_i}{\\sum N_i^2}, \\quad s^2 = \\frac{\\sum (V_i - b N_i)^2}{n - 1}, \\quad u(b) = \\frac{s}{\\sqrt{\\sum N_i^2}}, \\quad R^2 = 1 - \\frac{(n - 1) s^2}{\\sum V_i^2}',
  ],
  limits: [{ code: 'LINE_NO_AFTER_RUN', broken: () => true }],
  sources: [leastSquaresTheory],
  check: ({ counts, volumes }) => listLengths({ counts, volumes }),
  compute: lineThroughOrigin,
});
