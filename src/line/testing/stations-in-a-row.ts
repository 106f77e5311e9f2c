import type { Draw } from '../shift/draw.ts';
import type { ShiftLine } from '../shift/shift-line.ts';
import type { StopCause } from '../shift/stop-cause.ts';

/**
 * Stations of one bottle at a time, built of those of the line: what comes in, one or two that work, one that takes off.
 * `room` counts places with the one at the station; a first station without load is never short.
 */
export const stationsInARow = (parts: {
  readonly duration: number;
  readonly warmUp?: number;
  readonly load?: Draw;
  readonly first?: { readonly seconds: Draw; readonly room?: number; readonly stops?: readonly StopCause[] };
  readonly second: { readonly seconds: Draw; readonly room?: number; readonly stops?: readonly StopCause[] };
  readonly third?: { readonly seconds: Draw; readonly room?: number };
}): ShiftLine => {
  const { duration, warmUp = 0, load, first, second, third } = parts;
  const endless = Number.POSITIVE_INFINITY;
  return {
    duration,
    warmUp,
    start: 'empty',
    conveyors: [],
    wayRoom: first?.room ?? endless,
    holds: [],
    lineStops: [],
    ...(load === undefined
      ? {}
      : { load: { station: 'L', by: 'automatic', seconds: load, per: 'row', missing: 0, room: endless } }),
    ...(first === undefined
      ? {}
      : {
          fill: {
            station: 'A',
            lanes: 1,
            travelIn: 0,
            lift: 0,
            lag: 0,
            filling: first.seconds,
            drip: 0,
            lower: 0,
            clearOut: 0,
            stops: first.stops ?? [],
          },
        }),
    closing: {
      station: 'B',
      heads: 1,
      perBottle: second.seconds,
      room: second.room ?? endless,
      transit: 0,
      rejected: 0,
      stops: second.stops ?? [],
    },
    ...(third === undefined
      ? {}
      : {
          takeOff: {
            station: 'C',
            by: 'automatic',
            perBottle: third.seconds,
            room: third.room ?? endless,
            transit: 0,
          },
        }),
  };
};
