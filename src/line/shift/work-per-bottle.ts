import { meanOf } from './sampled.ts';
import type { ShiftLine } from './shift-line.ts';

/** s that each station works for a bottle in the mean: what its stops that count work are counted in; absent stations none. */
export const workPerBottle = (line: ShiftLine) => {
  const { load, washer, fill, closing, takeOff } = line;
  const set = fill?.lanes ?? washer?.row ?? 1;
  const index = washer === undefined ? undefined : (washer.stroke + washer.dwell) / washer.row;
  return {
    load:
      load === undefined ? undefined : meanOf(load.seconds) / (load.per === 'row' ? (washer?.row ?? set) : 1),
    washer: index,
    discharge: index,
    fill:
      fill === undefined
        ? undefined
        : (fill.travelIn +
            fill.lift +
            fill.lag +
            meanOf(fill.filling) +
            (fill.supply?.seconds[0] ?? 0) +
            fill.drip +
            fill.lower +
            fill.clearOut) /
          fill.lanes,
    closing:
      closing === undefined ? undefined : (Math.ceil(set / closing.heads) * meanOf(closing.perBottle)) / set,
    sorter: closing?.chute === undefined ? undefined : 1 / closing.chute.rate,
    takeOff: takeOff === undefined ? undefined : meanOf(takeOff.perBottle),
  };
};
