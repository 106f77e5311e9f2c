import fc from 'fast-check';
import type { LineTimes } from './line-times.ts';

const seconds = (most: number): fc.Arbitrary<number> =>
  // tenths come often: ties between stations are where an order of events would show
  fc.oneof(
    fc.integer({ min: 0, max: most * 10 }).map((tenths) => tenths / 10),
    fc.double({ min: 0, max: most, noNaN: true }),
  );

const some = <T>(value: fc.Arbitrary<T>): fc.Arbitrary<T | undefined> => fc.option(value, { nil: undefined });

export interface LineShape {
  /** Rows equal to lanes, so that a block is one row. */
  readonly equalRows?: boolean;
  /** Nothing without a bound to its room, so that every station feels every other. */
  readonly bounded?: boolean;
}

/** Whole lines: washer, way, fill station, and mostly heads and take-off, with every mix of rows, room and holds. */
export const anyLine = ({ equalRows = false, bounded = false }: LineShape = {}): fc.Arbitrary<LineTimes> =>
  fc
    .record({
      row: fc.integer({ min: 1, max: 8 }),
      lanes: fc.integer({ min: 1, max: 8 }),
      // a washer of no time at all would discharge without end at one moment
      stroke: seconds(6).map((time) => 0.1 + time),
      dwell: seconds(15),
      way: fc.array(seconds(5), { maxLength: 2 }),
      wayRoom: some(fc.integer({ min: 0, max: 40 })),
      fill: fc.record({
        travelIn: seconds(3),
        lift: seconds(2),
        lag: seconds(1),
        filling: seconds(20),
        drip: seconds(2),
        lower: seconds(2),
        clearOut: seconds(4),
      }),
      closing: some(
        fc.record({
          heads: fc.integer({ min: 1, max: 4 }),
          perBottle: seconds(6),
          room: some(fc.integer({ min: 0, max: 24 })),
        }),
      ),
      takeOff: some(
        fc.record({
          rate: fc.double({ min: 0.1, max: 4, noNaN: true }),
          room: some(fc.integer({ min: 0, max: 24 })),
        }),
      ),
      holds: fc.array(fc.constantFrom('fill end' as const, 'release' as const), { maxLength: 2 }),
    })
    .map((line): LineTimes => {
      const row = equalRows ? line.lanes : line.row;
      // room for a row and a set always lets the line go on
      const unsaid = bounded ? row + line.lanes : Number.POSITIVE_INFINITY;
      const rowAndSet = bounded ? row + line.lanes : 0;
      return {
        washer: { station: 'W', row, stroke: line.stroke, dwell: line.dwell },
        way: line.way.map((time, i) => ({ station: `C${i + 1}`, step: 'convey', seconds: time })),
        wayRoom: Math.max(rowAndSet, line.wayRoom ?? unsaid),
        fill: { station: 'F', lanes: line.lanes, ...line.fill },
        ...(line.closing === undefined
          ? {}
          : { closing: { station: 'K', ...line.closing, room: line.closing.room ?? unsaid } }),
        ...(line.takeOff === undefined
          ? {}
          : { takeOff: { station: 'T', ...line.takeOff, room: line.takeOff.room ?? unsaid } }),
        holds: line.holds.map((until, i) => ({ rule: `H${i + 1}`, until })),
      };
    });
