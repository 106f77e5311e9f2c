import type { ShiftLine, StopCause } from '../../line/shift/index.ts';
import type { LineChange } from './line-change.ts';

/** s and bottles by which a change is tried: what one can picture at the machine. */
const oneSecond = 1;
const fourBottles = 4;

const without = (stops: readonly StopCause[] | undefined, cause: string): readonly StopCause[] =>
  (stops ?? []).filter((stop) => stop.cause !== cause);

/** A station without one of its causes; one that has it not stays the very same. */
const calm = <S extends { readonly stops?: readonly StopCause[] }>(station: S, cause: string): S =>
  station.stops?.some((stop) => stop.cause === cause) === true
    ? { ...station, stops: without(station.stops, cause) }
    : station;

const withoutCause = (line: ShiftLine, cause: string): ShiftLine => {
  const { load, washer, discharge, fill, closing, takeOff } = line;
  return {
    ...line,
    ...(load === undefined ? {} : { load: calm(load, cause) }),
    ...(washer === undefined ? {} : { washer: calm(washer, cause) }),
    ...(discharge === undefined ? {} : { discharge: calm(discharge, cause) }),
    ...(fill === undefined ? {} : { fill: calm(fill, cause) }),
    ...(closing === undefined
      ? {}
      : {
          closing: {
            ...calm(closing, cause),
            ...(closing.chute === undefined ? {} : { chute: calm(closing.chute, cause) }),
          },
        }),
    ...(takeOff === undefined ? {} : { takeOff: calm(takeOff, cause) }),
    conveyors: line.conveyors.map((conveyor) => calm(conveyor, cause)),
    lineStops: line.lineStops.filter((stop) => stop.cause !== cause),
  };
};

/** Every cause that makes something of the line stand, once. */
export const causesOf = (line: ShiftLine): readonly string[] => {
  const { load, washer, discharge, conveyors, fill, closing, takeOff } = line;
  const stations = [load, washer, discharge, ...conveyors, fill, closing, closing?.chute, takeOff];
  const stops = [...stations.flatMap((station) => station?.stops ?? []), ...line.lineStops];
  return [...new Set(stops.map(({ cause }) => cause))];
};

/** The line with the washer's index at so many seconds: the stroke stays, the dwell takes the rest. */
export const lineAtIndex = (line: ShiftLine, index: number): ShiftLine => {
  if (line.washer === undefined) return line;
  return { ...line, washer: { ...line.washer, dwell: Math.max(0, index - line.washer.stroke) } };
};

/** The changes that are tried, each with the line that it makes. */
export const lineChanges = (line: ShiftLine): readonly LineChange[] => {
  const { fill, washer, wayRoom } = line;
  const changes: LineChange[] = [];
  if (fill !== undefined) {
    // whatever the fill is drawn from, a second less before it is a second less in the station
    const quicker = { ...fill, lag: fill.lag - oneSecond };
    changes.push({ kind: 'fill', by: -oneSecond, after: { ...line, fill: quicker } });
  }
  if (washer !== undefined && washer.dwell > oneSecond) {
    changes.push({
      kind: 'index',
      by: -oneSecond,
      after: lineAtIndex(line, washer.stroke + washer.dwell - oneSecond),
    });
  }
  if (wayRoom < Number.POSITIVE_INFINITY) {
    changes.push({ kind: 'room', by: fourBottles, after: { ...line, wayRoom: wayRoom + fourBottles } });
  }
  for (const cause of causesOf(line))
    changes.push({ kind: 'cause', cause, after: withoutCause(line, cause) });
  return changes;
};
