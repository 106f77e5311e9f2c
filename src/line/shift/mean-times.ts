import type { LineTimes } from '../line-times.ts';
import { meanOf } from './sampled.ts';
import type { ShiftLine } from './shift-line.ts';

/**
 * The line with its mean times and no chance in it, for the exact period.
 *
 * Returns  with a supply that falls: its seconds with the tank full; nothing missing, fallen or rejected, no stop, caps
 *          without end. The load is left out, as the exact line has none
 */
export const meanTimes = (line: ShiftLine): LineTimes => {
  const { washer, discharge, conveyors, fill, closing, takeOff } = line;
  const setUp =
    discharge === undefined
      ? []
      : [{ station: discharge.station, step: 'setUp', seconds: discharge.seconds }];
  return {
    way: [...setUp, ...conveyors.map(({ stops: _, ...piece }) => ({ ...piece, step: 'convey' }))],
    wayRoom: line.wayRoom,
    holds: line.holds,
    ...(washer === undefined
      ? {}
      : { washer: { station: washer.station, row: washer.row, stroke: washer.stroke, dwell: washer.dwell } }),
    ...(fill === undefined
      ? {}
      : {
          fill: {
            station: fill.station,
            lanes: fill.lanes,
            travelIn: fill.travelIn,
            lift: fill.lift,
            lag: fill.lag,
            filling: meanOf(fill.filling) + (fill.supply?.seconds[0] ?? 0),
            drip: fill.drip,
            lower: fill.lower,
            clearOut: fill.clearOut,
          },
        }),
    ...(closing === undefined
      ? {}
      : {
          closing: {
            station: closing.station,
            heads: closing.heads,
            perBottle: meanOf(closing.perBottle),
            room: closing.room,
          },
        }),
    ...(takeOff === undefined
      ? {}
      : {
          takeOff: { station: takeOff.station, rate: 1 / meanOf(takeOff.perBottle), room: takeOff.room },
        }),
  };
};
