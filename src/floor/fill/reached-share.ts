import type { FloorPrediction } from '../../fill/predict-other-floor.ts';
import { estimatedOf } from '../../fill/student-sum.ts';
import { studentCdf } from '../../statistics/student.ts';
import type { CapacityFound } from './capacity-of.ts';

/** Share of bottles of each lane that will reach their level with the counts that are foretold for. */
export const reachedShare = (
  { lanes }: FloorPrediction,
  { capacity: { mean, deviation, meanDeviation, dof } }: CapacityFound,
): readonly number[] =>
  lanes.map(({ bottle }) => {
    const over = estimatedOf(bottle.value - mean, [
      { variance: bottle.deviation ** 2, dof: bottle.dof },
      { variance: deviation ** 2, dof },
      { variance: meanDeviation ** 2, dof },
    ]);
    return studentCdf(over.value / over.deviation, over.dof);
  });
