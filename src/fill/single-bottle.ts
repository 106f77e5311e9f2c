import { studentQuantile } from '../statistics/student.ts';
import type { LanesEstimate } from './estimate-lanes.ts';
import type { ForecastFigure } from './row-forecast.ts';
import { type Estimated, estimatedOf, type VariancePart } from './student-sum.ts';

/**
 * One bottle about what is foretold.
 *
 * Method   the scatter of the trials tells of the mean and of single bottles alike, so both parts stand on its degrees of
 *          freedom. What the instrument added to it is either left in, which is never too narrow, or taken off, which
 *          leaves fewer degrees: dof ((m + o)/(m + s))^2 for a mean's part m, an own part o and a scatter s. Of the two
 *          the one that reaches less far
 * Symbols  share   scalar  one-sided share that the bottle is asked for
 *          others  what varies besides, such as what bottles hold
 */
export const singleBottle = (
  { value, parts }: ForecastFigure,
  { ownSpread, volumeSpread }: LanesEstimate,
  share: number,
  others: readonly VariancePart[] = [],
): Estimated => {
  const [scatter, ...known] = parts;
  const own = ownSpread.value ** 2;
  const seen = Math.max(own, volumeSpread.value ** 2);
  const [taken, left] = [own, seen].map((single) => {
    const variance = scatter!.variance + single;
    const remains = variance / (scatter!.variance + seen);
    return estimatedOf(value, [{ variance, dof: scatter!.dof * remains * remains }, ...known, ...others]);
  });
  const reach = (of: Estimated): number => studentQuantile(share, of.dof) * of.deviation;
  return reach(taken!) < reach(left!) ? taken! : left!;
};
