import { type EstimateAnswer, estimateLanes } from '../../fill/estimate-lanes.ts';
import type { BookReader } from '../book-reader.ts';
import type { FillFloor } from './fill-floor.ts';
import { laneSpreads } from './lane-spreads.ts';
import type { TrialsInSi } from './trials-in-si.ts';

/** What the trials of a floor say of its lanes; undefined where the book says too little of the floor, or none was made. */
export const estimateOf = (
  reader: BookReader,
  { uncertain, inputs }: FillFloor,
  { trials }: TrialsInSi,
): EstimateAnswer | undefined => {
  if (uncertain === undefined || trials.length === 0) return undefined;
  const { level, lanes } = inputs.model;
  return estimateLanes({
    floor: uncertain,
    trials: trials.map(({ fill }) => fill),
    priors: uncertain.system.lanes.map((lane) => {
      const path = lanes.find(({ tag }) => tag === lane.tag)?.path;
      return path === undefined ? undefined : laneSpreads(reader, path, lane);
    }),
    ...(level === undefined ? {} : { capacity: level }),
  });
};
