import type { LineTimes } from '../line-times.ts';
import type { ShiftLine } from './shift-line.ts';

/** The line of constant times as a line for a shift, nothing lost and nothing stopped. */
export const shiftOfTimes = (times: LineTimes, duration: number): ShiftLine => ({
  duration,
  warmUp: 0,
  start: 'empty',
  ...(times.washer === undefined ? {} : { washer: { ...times.washer, rows: 0, zones: [] } }),
  conveyors: times.way.map(({ step: _, ...piece }) => piece),
  wayRoom: times.wayRoom,
  ...(times.fill === undefined ? {} : { fill: times.fill }),
  ...(times.closing === undefined ? {} : { closing: { ...times.closing, transit: 0, rejected: 0 } }),
  ...(times.takeOff === undefined
    ? {}
    : {
        takeOff: {
          station: times.takeOff.station,
          by: 'automatic',
          perBottle: 1 / times.takeOff.rate,
          room: times.takeOff.room,
          transit: 0,
        },
      }),
  holds: times.holds,
  lineStops: [],
});
