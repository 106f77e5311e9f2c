import type { FloorLimits } from './figure-values.ts';
import type { FloorInputs } from './read-floor.ts';

/** Places of the limits in the book, whether something stands there or not. */
export interface LimitPaths {
  readonly jetBeforeCovered?: string;
  readonly jetAfterCovered?: string;
  readonly rating?: string;
  readonly outlet: string;
  readonly makeUp: string;
}

export const limitPaths = (inputs: FloorInputs): LimitPaths => {
  const source = `${inputs.floorPath}/supply/source`;
  const pumped = inputs.supply?.source.kind === 'pumped';
  const product = inputs.liquid?.productPath;
  return {
    outlet: `${source}/outlet`,
    makeUp: pumped ? `${source}/tank/makeUp` : `${source}/makeUp`,
    ...(product === undefined
      ? {}
      : {
          jetBeforeCovered: `${product}/foaming/jetBeforeCovered`,
          jetAfterCovered: `${product}/foaming/jetAfterCovered`,
        }),
    ...(inputs.stationPath === undefined ? {} : { rating: `${inputs.stationPath}/manifoldRating` }),
  };
};

const ratingPaths = (inputs: FloorInputs): readonly string[] =>
  (inputs.supply?.runPaths ?? []).map((path) => `${path}/rating`);

/** Every place that a limit is read from. */
export const placesOfLimits = (inputs: FloorInputs): readonly string[] => [
  ...Object.values(limitPaths(inputs)),
  ...ratingPaths(inputs),
];

/** What product, line and source allow; the lowest rating among manifold and run counts. */
export const readLimits = (inputs: FloorInputs): FloorLimits => {
  const read = inputs.forFill;
  const paths = limitPaths(inputs);
  const jetBeforeCovered =
    paths.jetBeforeCovered === undefined ? undefined : read.number(paths.jetBeforeCovered, 'velocity');
  const jetAfterCovered =
    paths.jetAfterCovered === undefined ? undefined : read.number(paths.jetAfterCovered, 'velocity');
  const ratings = [paths.rating, ...ratingPaths(inputs)]
    .map((path) => (path === undefined ? undefined : read.number(path, 'gaugePressure')))
    .filter((rating) => rating !== undefined);
  const outlet = read.number(paths.outlet, 'length');
  const makeUp = read.number(paths.makeUp, 'volumeFlow');
  return {
    ...(jetBeforeCovered === undefined ? {} : { jetBeforeCovered }),
    ...(jetAfterCovered === undefined ? {} : { jetAfterCovered }),
    ...(ratings.length === 0 ? {} : { rating: Math.min(...ratings) }),
    ...(outlet === undefined ? {} : { outlet }),
    ...(makeUp === undefined ? {} : { makeUp }),
  };
};
