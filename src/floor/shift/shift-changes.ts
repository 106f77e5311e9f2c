import type { ShiftLine, StopCause } from '../../line/shift/index.ts';

/** One change of a line that is tried, and the line with it. */
export interface ShiftChangeTried {
  readonly change: 'fill' | 'dwell' | 'cap' | 'wayRoom' | 'capRoom' | 'takeOffRoom' | 'cause';
  /** Seconds or bottles by which something is changed. */
  readonly by?: number;
  /** Tag of the cause that is gone. */
  readonly cause?: string;
  readonly line: ShiftLine;
}

/** By how much a change is tried: what one can picture at the machine. */
const oneSecond = 1;
const fourBottles = 4;
/** s a bottle; heads take two or three */
const tenthOfSecond = 0.1;

type WithStops = { readonly stops?: readonly StopCause[] };

const stationsOf = ({ load, washer, discharge, conveyors, fill, closing, takeOff }: ShiftLine) => [
  load,
  washer,
  discharge,
  ...conveyors,
  fill,
  closing,
  closing?.chute,
  takeOff,
];

/** Tags of all causes that make something of the line stand, each once. */
export const causesOf = (line: ShiftLine): readonly string[] => [
  ...new Set(
    [...stationsOf(line).flatMap((station) => station?.stops ?? []), ...line.lineStops].map(
      ({ cause }) => cause,
    ),
  ),
];

/** The line without one of its causes. */
export const withoutCause = (line: ShiftLine, cause: string): ShiftLine => {
  const calm = <S extends WithStops>(station: S): S =>
    station.stops === undefined
      ? station
      : { ...station, stops: station.stops.filter((stop) => stop.cause !== cause) };
  const { load, washer, discharge, fill, closing, takeOff } = line;
  return {
    ...line,
    ...(load === undefined ? {} : { load: calm(load) }),
    ...(washer === undefined ? {} : { washer: calm(washer) }),
    ...(discharge === undefined ? {} : { discharge: calm(discharge) }),
    ...(fill === undefined ? {} : { fill: calm(fill) }),
    ...(closing === undefined
      ? {}
      : {
          closing: {
            ...calm(closing),
            ...(closing.chute === undefined ? {} : { chute: calm(closing.chute) }),
          },
        }),
    ...(takeOff === undefined ? {} : { takeOff: calm(takeOff) }),
    conveyors: line.conveyors.map(calm),
    lineStops: line.lineStops.filter((stop) => stop.cause !== cause),
  };
};

/** The line with a fill that takes so much longer; shorter where it is negative. */
export const withFillBy = (line: ShiftLine, seconds: number): ShiftLine =>
  // what is lost before the lanes flow is lost for the set, whatever the fill is drawn from
  line.fill === undefined ? line : { ...line, fill: { ...line.fill, lag: line.fill.lag + seconds } };

const ends = (room: number): boolean => room < Number.POSITIVE_INFINITY;

/**
 * The changes whose worth is asked: a second of the fill and of the index, a tenth of a bottle's closing, four bottles of room
 * at each place that has an end, and each cause gone.
 */
export const shiftChanges = (line: ShiftLine): readonly ShiftChangeTried[] => {
  const { fill, washer, closing, takeOff, wayRoom } = line;
  const changes: ShiftChangeTried[] = [];
  if (fill !== undefined) {
    changes.push({ change: 'fill', by: -oneSecond, line: withFillBy(line, -oneSecond) });
  }
  if (washer !== undefined && washer.dwell > oneSecond) {
    const quicker = { ...washer, dwell: washer.dwell - oneSecond };
    changes.push({ change: 'dwell', by: -oneSecond, line: { ...line, washer: quicker } });
  }
  if (closing !== undefined && typeof closing.perBottle === 'number' && closing.perBottle > tenthOfSecond) {
    const quicker = { ...closing, perBottle: closing.perBottle - tenthOfSecond };
    changes.push({ change: 'cap', by: -tenthOfSecond, line: { ...line, closing: quicker } });
  }
  if (ends(wayRoom)) {
    changes.push({ change: 'wayRoom', by: fourBottles, line: { ...line, wayRoom: wayRoom + fourBottles } });
  }
  if (closing !== undefined && ends(closing.room)) {
    const wider = { ...closing, room: closing.room + fourBottles };
    changes.push({ change: 'capRoom', by: fourBottles, line: { ...line, closing: wider } });
  }
  if (takeOff !== undefined && ends(takeOff.room)) {
    const wider = { ...takeOff, room: takeOff.room + fourBottles };
    changes.push({ change: 'takeOffRoom', by: fourBottles, line: { ...line, takeOff: wider } });
  }
  for (const cause of causesOf(line)) {
    changes.push({ change: 'cause', cause, line: withoutCause(line, cause) });
  }
  return changes;
};
