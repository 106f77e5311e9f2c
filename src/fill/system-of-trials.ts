import type { FillSystem } from '../hydraulics/system.ts';
import { laneOf, laneValues, perLane } from './lane-unknowns.ts';
import type { placed } from './row-forecast.ts';
import { supplyAt } from './row-model.ts';
import { movedFloor } from './uncertain-floor.ts';

/**
 * Lanes and supply of a floor as trials found them.
 *
 * Symbols  model, unknowns  of `placed`: on the floor of the trials, or moved to another
 * Returns  plain hydraulics, with the counts of the book
 * Assumes  the most likely values; how sure they are is said by `predictOtherFloor`
 */
export const systemOfTrials = ({
  model,
  unknowns,
}: Pick<ReturnType<typeof placed>, 'model' | 'unknowns'>): FillSystem => {
  const from = supplyAt(model);
  const floor = movedFloor(model.floor, unknowns.subarray(from, from + model.floor.unknowns.length));
  return {
    ...floor,
    lanes: model.scales.map((scale, lane) =>
      laneOf(scale, laneValues(scale, unknowns, perLane * lane), scale.lane.preset),
    ),
  };
};
