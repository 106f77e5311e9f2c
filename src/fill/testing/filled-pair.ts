import { fillRow } from '../../hydraulics/fill-row.ts';
import { manifoldBalance } from '../../hydraulics/manifold-balance.ts';
import { runInertia } from '../../hydraulics/run-inertia.ts';
import { startStored } from '../../hydraulics/stored.ts';
import type { FillSystem } from '../../hydraulics/system.ts';
import type { ColumnShare } from '../uncertain-floor.ts';
import { type FloorPair, floorPair, type PairOptions, type TrueRow } from './floor-pair.ts';
import type { Random } from './random.ts';

/** How the rows of a pair truly fill, where it is not as the estimator's own hydraulics have it, and what is told of it. */
export interface FilledBy {
  readonly here?: (system: FillSystem) => TrueRow;
  readonly there?: (system: FillSystem) => TrueRow;
  readonly column: ColumnShare;
}

/** The pairs of the study, filled in another way. */
export const pairFilledBy = (
  random: Random,
  options: PairOptions,
  { here, there, column }: FilledBy,
): FloorPair => {
  const pair = floorPair(random, options, (system) => {
    const steady = fillRow(system, startStored(system.source));
    if ('stuck' in steady || here === undefined) return steady;
    const { volumes, times } = here(system);
    // the pair adds the lag of the start to every row
    const lag = Math.LN2 * runInertia(system, manifoldBalance(system).flow).timeConstant;
    const lanes = steady.lanes.map((lane, i) => ({
      ...lane,
      volume: volumes[i]!,
      fillTime: times[i]! - lag,
    }));
    return { ...steady, lanes };
  });
  return {
    ...pair,
    here: { ...pair.here, column },
    there: { ...pair.there, column },
    ...(there === undefined ? {} : { truth: there }),
  };
};
