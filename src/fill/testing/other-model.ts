/** Pairs whose truth is of another model than the estimator's: what changes between the floors is not in its equations. */
import { allowancesFor } from '../allowances.ts';
import { type FloorPair, floorPair, type PairOptions } from './floor-pair.ts';
import type { Random } from './random.ts';

/** A thin juice: three times as viscous as the water that the builder runs, and a little heavier. */
const juice = { density: 1045, viscosity: 3.1e-3 };

/** The same trials; there a meter whose factor bends with flow and viscosity, valves on other air, and a thicker product. */
export const otherModelPair = (random: Random, options: PairOptions): FloorPair => {
  const pair = floorPair(random, options);
  const { uniform } = random;
  const airRatio = uniform(0.7, 1.2);
  const viscosityRatio = juice.viscosity / 1.002e-3;
  const flowRatio = uniform(1.5, 3);
  // an S-shaped curve of error against the logarithm of flow over viscosity, within the class of 0.5 %
  const bend = uniform(-0.005, 0.005);
  const curve = bend * Math.tanh(Math.log(flowRatio * viscosityRatio) / 2);
  const slower = airRatio ** -uniform(0.6, 1.4);
  const thinner = 1 - 0.05 * Math.log10(viscosityRatio) * uniform(0.3, 1.7);
  const product = {
    ...pair.trueThere,
    liquid: juice,
    lanes: pair.trueThere.lanes.map((lane) => ({
      ...lane,
      pulses: lane.pulses / (1 + curve),
      phase: lane.phase * (1 + curve),
      delay: lane.delay * slower,
      closing: lane.closing * slower,
      kv: lane.kv * thinner,
      kvSlow: lane.kvSlow * thinner,
    })),
  };
  return {
    ...pair,
    there: { ...pair.there, system: { ...pair.there.system, liquid: juice } },
    productThere: product,
    allowances: allowancesFor({ flowRatio, viscosityRatio, airRatio }),
  };
};
