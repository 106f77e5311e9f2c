import fc from 'fast-check';
import { anyLine } from '../any-line.arbitrary.ts';
import type { HoldRule } from '../hold-rule.ts';
import type { Draw } from './draw.ts';
import type { ShiftLine } from './shift-line.ts';
import { shiftOfTimes } from './shift-of-times.ts';
import { owners, type StopCause } from './stop-cause.ts';

const drawn = (most: number): fc.Arbitrary<Draw> =>
  fc.oneof(
    fc.double({ min: 0, max: most, noNaN: true }),
    fc.double({ min: 0.01, max: most, noNaN: true }).map((mean) => ({ kind: 'exponential' as const, mean })),
    fc
      .double({ min: 0, max: most, noNaN: true })
      .map((low) => ({ kind: 'uniform' as const, low, high: 1.5 * low })),
    fc
      .array(fc.double({ min: 0, max: most, noNaN: true }), { minLength: 2, maxLength: 6 })
      .map((times) => ({ kind: 'quantiles' as const, quantiles: times.sort((a, b) => a - b) })),
  );

/** One cause or none, of a name of its own. */
const stopsOf = (station: string): fc.Arbitrary<StopCause[]> =>
  fc.uniqueArray(
    fc.record({
      cause: fc.constantFrom('jam', 'fault', 'empty').map((name) => `${station} ${name}`),
      between: fc.double({ min: 20, max: 900, noNaN: true }),
      clear: fc.double({ min: 1, max: 200, noNaN: true }),
      owner: fc.constantFrom(...owners),
      pattern: fc.constantFrom(
        { kind: 'exponential' as const },
        { kind: 'constant' as const },
        { kind: 'geometric' as const, step: 1 },
      ),
      counts: fc.constantFrom('working' as const, 'clock' as const),
    }),
    { maxLength: 2, selector: ({ cause }) => cause },
  );

const chance = fc.oneof(fc.constant(0), fc.double({ min: 0, max: 0.2, noNaN: true }));

const keeping = fc.constantFrom<Omit<HoldRule, 'rule'>>(
  { until: 'running' },
  { by: 'closing', until: 'running' },
  { holds: 'fill', by: 'takeOff', until: 'running' },
  { holds: 'closing', by: 'takeOff', until: 'running' },
  { until: 'way out' },
  { by: 'takeOff', until: 'room' },
  { holds: 'fill', by: 'closing', until: 'room' },
);

/** Lines with everything that can vary, stop, fall, or run out. */
export const anyShiftLine = (): fc.Arbitrary<ShiftLine> =>
  fc
    .record({
      times: fc.oneof(anyLine(), anyLine({ belts: true })),
      rows: fc.integer({ min: 0, max: 6 }),
      start: fc.constantFrom('empty' as const, 'washer full' as const),
      load: fc.option(
        fc.record({
          by: fc.constantFrom('operator' as const, 'automatic' as const),
          seconds: drawn(3),
          per: fc.constantFrom('bottle' as const, 'row' as const),
          missing: chance,
          room: fc.integer({ min: 1, max: 20 }),
          stops: stopsOf('L'),
        }),
      ),
      discharge: fc.option(
        fc.record({
          seconds: fc.double({ min: 0, max: 2, noNaN: true }),
          fallen: chance,
          stops: stopsOf('D'),
        }),
      ),
      washerStops: stopsOf('W'),
      conveyorStops: stopsOf('C1'),
      fillStops: stopsOf('F'),
      filling: drawn(20),
      closing: fc.record({ perBottle: drawn(4), rejected: chance, stops: stopsOf('K') }),
      chute: fc.option(
        fc.record({
          low: fc.integer({ min: 0, max: 20 }),
          between: fc.integer({ min: 4, max: 60 }),
          rate: fc.double({ min: 0.2, max: 4, noNaN: true }),
          runUp: fc.double({ min: 0, max: 20, noNaN: true }),
          stops: stopsOf('S'),
        }),
      ),
      takeOff: fc.record({ perBottle: drawn(3), stops: stopsOf('T') }),
      lineStop: fc.option(
        fc.record({
          between: fc.double({ min: 200, max: 2000, noNaN: true }),
          clear: fc.double({ min: 5, max: 200, noNaN: true }),
        }),
      ),
      keeps: fc.array(keeping, { maxLength: 1 }),
      core: fc.constantFrom('washer' as const, 'fill' as const),
      warmUp: fc.constantFrom(0, 300),
    })
    .map((parts): ShiftLine => {
      const line = shiftOfTimes(parts.times, 1200);
      const { washer, fill, closing, takeOff, conveyors, wayRoom } = line;
      const unlikeRows = washer!.row !== fill!.lanes;
      return {
        ...line,
        holds: [
          ...line.holds,
          ...parts.keeps
            .filter(
              ({ holds = 'washer', by = 'fill' }) => line[holds] !== undefined && line[by] !== undefined,
            )
            .map((hold) => ({ rule: 'kept', ...hold })),
        ],
        warmUp: parts.warmUp,
        start: parts.start,
        core: parts.core,
        // gaps would leave a set of other size than the row for ever without its last bottle
        wayRoom: unlikeRows ? Math.max(wayRoom, washer!.row + fill!.lanes) : wayRoom,
        washer: {
          ...washer!,
          // an index of a tenth of a second would make a test of one line as long as of ten
          stroke: 1 + washer!.stroke,
          rows: parts.rows,
          stops: parts.washerStops,
          zones: parts.rows < 2 ? [] : [{ ...zone, rows: parts.rows - 1 }],
        },
        ...(parts.load === null ? {} : { load: { station: 'L', ...parts.load } }),
        ...(parts.discharge === null ? {} : { discharge: { station: 'D', ...parts.discharge } }),
        conveyors: conveyors.map((piece) =>
          piece.station === 'C1' ? { ...piece, stops: parts.conveyorStops } : piece,
        ),
        fill: { ...fill!, filling: parts.filling, stops: parts.fillStops },
        ...(closing === undefined
          ? {}
          : {
              closing: {
                ...closing,
                ...parts.closing,
                ...(parts.chute === null
                  ? {}
                  : {
                      chute: {
                        station: 'S',
                        ...parts.chute,
                        high: parts.chute.low + parts.chute.between,
                        start: parts.chute.low,
                      },
                    }),
              },
            }),
        ...(takeOff === undefined ? {} : { takeOff: { ...takeOff, ...parts.takeOff } }),
        lineStops:
          parts.lineStop === null
            ? []
            : [{ cause: 'guard', stations: ['W', 'F', 'K', 'S'], owner: 'people', ...parts.lineStop }],
      };
    });

const zone = {
  zone: 'Z1',
  rows: 1,
  share: 0.7,
  dead: 0.2,
  timeOut: 60,
  soaks: false,
  emptying: 0,
};
