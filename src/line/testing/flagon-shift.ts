import type { ShiftLine } from '../shift/shift-line.ts';
import type { StopCause } from '../shift/stop-cause.ts';

const stop = (cause: string, between: number, clear: number, owner: StopCause['owner']): StopCause => ({
  cause,
  between,
  clear,
  owner,
});

/** The line of the demonstration book for eight hours, as far as a general library says it too; stops invented. */
export const flagonShift: ShiftLine = {
  duration: 28_800,
  warmUp: 0,
  start: 'empty',
  washer: {
    station: '+WASH',
    row: 4,
    rows: 0,
    stroke: 1.8,
    dwell: 10.2,
    zones: [],
    stops: [stop('row pusher', 14_400, 240, 'machine')],
  },
  discharge: { station: '+SETUP', seconds: 0.4, fallen: 0 },
  conveyors: [{ station: '+CONV', seconds: 1 }],
  wayRoom: 4,
  fill: {
    station: '+FILL',
    lanes: 4,
    travelIn: 1,
    lift: 0.5,
    lag: 0.162,
    filling: { kind: 'uniform', low: 8.8, high: 9.8 },
    drip: 0.4,
    lower: 0.4,
    clearOut: 0.8,
    stops: [stop('valve', 10_800, 300, 'machine')],
  },
  closing: {
    station: '+CAP',
    heads: 1,
    perBottle: 2.4,
    room: 8,
    transit: 0,
    rejected: 0,
    stops: [stop('cap jam', 1200, 45, 'machine'), stop('no caps', 5400, 120, 'material')],
  },
  takeOff: {
    station: '+TAKE',
    by: 'operator',
    perBottle: 2.4,
    room: 48,
    transit: 0,
    stops: [stop('crates changed', 1800, 120, 'people')],
  },
  holds: [{ rule: 'H1', until: 'release' }],
  lineStops: [],
};
