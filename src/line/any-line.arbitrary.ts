import fc from 'fast-check';
import type { HoldRule } from './hold-rule.ts';
import type { LineTimes, WayPiece } from './line-times.ts';

/** No two alike: which of two comes first at one moment is anybody's where a belt just stops. */
const unlike = (most: number): fc.Arbitrary<number> =>
  fc.noBias(fc.integer({ min: 1, max: 999_983 })).map((part) => (most * part) / 999_983);

const seconds = (most: number): fc.Arbitrary<number> =>
  // tenths come often: ties between stations are where an order of events would show
  fc.oneof(
    fc.integer({ min: 0, max: most * 10 }).map((tenths) => tenths / 10),
    fc.double({ min: 0, max: most, noNaN: true }),
  );

const some = <T>(value: fc.Arbitrary<T>): fc.Arbitrary<T | undefined> => fc.option(value, { nil: undefined });

type Piece = Pick<WayPiece, 'seconds' | 'accumulates' | 'room'>;

const anyWay: fc.Arbitrary<Piece[]> = fc.array(
  fc.oneof(
    { weight: 2, arbitrary: unlike(60).map((time): Piece => ({ seconds: 0.1 + time, accumulates: false })) },
    {
      weight: 1,
      arbitrary: fc
        .record({ seconds: unlike(5), room: fc.integer({ min: 0, max: 30 }) })
        .map((piece): Piece => ({ ...piece, accumulates: true })),
    },
  ),
  { minLength: 1, maxLength: 4 },
);

export interface LineShape {
  /** Rows equal to lanes, so that a block is one row. */
  readonly equalRows?: boolean;
  /** Nothing without a bound to its room, so that every station feels every other. */
  readonly bounded?: boolean;
  /** Conveyors that stand with what stands at their ends, some of them. */
  readonly belts?: boolean;
}

/** What is held lies before what holds. */
const anyHold = fc.constantFrom<Omit<HoldRule, 'rule'>>(
  { until: 'fill end' },
  { until: 'release' },
  { by: 'closing', until: 'release' },
  { by: 'takeOff', until: 'release' },
  { holds: 'fill', by: 'closing', until: 'release' },
  { holds: 'fill', by: 'takeOff', until: 'release' },
  { holds: 'closing', by: 'takeOff', until: 'release' },
);

/** Whole lines: washer, way, fill station, and mostly heads and take-off, with every mix of rows, room and holds. */
export const anyLine = ({
  equalRows = false,
  bounded = false,
  belts = false,
}: LineShape = {}): fc.Arbitrary<LineTimes> => {
  const time = belts ? unlike : seconds;
  return fc
    .record({
      row: fc.integer({ min: 1, max: 8 }),
      lanes: fc.integer({ min: 1, max: 8 }),
      // a washer of no time at all would discharge without end at one moment
      stroke: time(6).map((stroke) => 0.1 + stroke),
      dwell: time(15),
      way: belts
        ? anyWay
        : fc.array(
            time(5).map((way): Piece => ({ seconds: way })),
            { maxLength: 2 },
          ),
      wayRoom: some(fc.integer({ min: 0, max: 40 })),
      fill: fc.record({
        travelIn: time(3),
        lift: time(2),
        lag: time(1),
        filling: time(20),
        drip: time(2),
        lower: time(2),
        clearOut: time(4),
      }),
      closing: some(
        fc.record({
          heads: fc.integer({ min: 1, max: 4 }),
          perBottle: time(6),
          room: some(fc.integer({ min: 0, max: 24 })),
        }),
      ),
      takeOff: some(
        fc.record({
          rate: fc.double({ min: 0.1, max: 4, noNaN: true }),
          room: some(fc.integer({ min: 0, max: 24 })),
        }),
      ),
      holds: fc.array(anyHold, { maxLength: 2 }),
    })
    .map((line): LineTimes => {
      const row = equalRows ? line.lanes : line.row;
      // room for a row and a set always lets the line go on
      const unsaid = bounded ? row + line.lanes : Number.POSITIVE_INFINITY;
      const rowAndSet = bounded ? row + line.lanes : 0;
      return {
        washer: { station: 'W', row, stroke: line.stroke, dwell: line.dwell },
        way: line.way.map((piece, i) => ({ station: `C${i + 1}`, step: 'convey', ...piece })),
        wayRoom: Math.max(rowAndSet, line.wayRoom ?? unsaid),
        fill: { station: 'F', lanes: line.lanes, ...line.fill },
        ...(line.closing === undefined
          ? {}
          : { closing: { station: 'K', ...line.closing, room: line.closing.room ?? unsaid } }),
        ...(line.takeOff === undefined
          ? {}
          : { takeOff: { station: 'T', ...line.takeOff, room: line.takeOff.room ?? unsaid } }),
        holds: line.holds
          .filter(
            ({ holds, by }) =>
              (line.closing !== undefined || (holds !== 'closing' && by !== 'closing')) &&
              (line.takeOff !== undefined || by !== 'takeOff'),
          )
          .map((hold, i) => ({ rule: `H${i + 1}`, ...hold })),
      };
    });
};
