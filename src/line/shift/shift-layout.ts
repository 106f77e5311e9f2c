import { headsTime } from '../../sheets/rate/station-rate.ts';
import type { ShiftLine } from './shift-line.ts';
import type { LostStep, StationState } from './shift-result.ts';
import type { Owner, StopPattern } from './stop-cause.ts';

export const states: readonly StationState[] = [
  'running',
  'starved',
  'blocked',
  'held',
  'caps',
  'stopped',
  'idle',
];

export const steps: readonly LostStep[] = [
  'load',
  'stroke',
  'dwell',
  'setUp',
  'convey',
  'travelIn',
  'fill',
  'lower',
  'clearOut',
  'cap',
  'sorter',
  'takeOff',
  'start',
];

/** Numbers of states and steps, as the loops want them. */
export const running = 0;
export const starved = 1;
export const blocked = 2;
export const held = 3;
export const caps = 4;
export const stopped = 5;
export const idle = 6;

export const stepOf = Object.fromEntries(steps.map((step, i) => [step, i])) as Readonly<
  Record<LostStep, number>
>;

export interface LaidCause {
  readonly cause: string;
  readonly owner: Owner;
  readonly between: number;
  readonly clear: number;
  readonly pattern?: StopPattern;
  /** Numbers of the stations that it strikes. */
  readonly stations: readonly number[];
  /** Goes by the clock, and how: alone, or one after the other at its station. */
  readonly clock: false | 'in turn' | 'at once';
}

/** Stations, causes and streams of a line by number. */
export interface ShiftLayout {
  readonly tags: readonly string[];
  /** Numbers of the stations; -1 where there is none. */
  readonly load: number;
  readonly washer: number;
  readonly discharge: number;
  readonly conveyors: readonly number[];
  readonly fill: number;
  readonly closing: number;
  readonly sorter: number;
  readonly takeOff: number;
  readonly core: number;
  readonly causes: readonly LaidCause[];
  /** Bottles of a row and of a set. */
  readonly row: number;
  readonly lanes: number;
  /** Rows that have room before the washer, places on the way, sets before heads and take-off. */
  readonly rowsLoaded: number;
  readonly wayRoom: number;
  readonly setsBeforeHeads: number;
  readonly setsBeforeTakeOff: number;
  /** A set is a row: gaps in it stay, and its places count. */
  readonly rowsAreSets: boolean;
}

const wholeSets = (room: number, bottles: number): number => Math.max(1, Math.floor(room / bottles));

export const layOut = (line: ShiftLine): ShiftLayout => {
  const tags: string[] = [];
  const causes: LaidCause[] = [];
  const add = (station: { readonly station: string } | undefined): number =>
    station === undefined ? -1 : tags.push(station.station) - 1;
  const load = add(line.load);
  const washer = add(line.washer);
  const discharge = add(line.discharge);
  const conveyors = line.conveyors.map(add);
  const fill = add(line.fill);
  const closing = add(line.closing);
  const sorter = add(line.closing?.chute);
  const takeOff = add(line.takeOff);
  const stationed = [
    line.load,
    line.washer,
    line.discharge,
    ...line.conveyors,
    line.fill,
    line.closing,
    line.closing?.chute,
    line.takeOff,
  ].filter((station) => station !== undefined);
  stationed.forEach(({ stops }, station) => {
    for (const stop of stops ?? []) {
      const byClock = stop.counts === 'clock' || conveyors.includes(station);
      causes.push({ ...stop, stations: [station], clock: byClock && 'in turn' });
    }
  });
  for (const stop of line.lineStops) {
    const stations = stop.stations.map((tag) => tags.indexOf(tag)).filter((station) => station >= 0);
    causes.push({ ...stop, stations, clock: 'at once' });
  }
  const named = { washer, fill, closing, takeOff };
  const row = line.washer?.row ?? line.fill?.lanes ?? 1;
  const lanes = line.fill?.lanes ?? row;
  return {
    tags,
    load,
    washer,
    discharge,
    conveyors,
    fill,
    closing,
    sorter,
    takeOff,
    core:
      line.core === undefined
        ? [washer, fill, closing, takeOff].find((station) => station >= 0)!
        : named[line.core],
    causes,
    row,
    lanes,
    rowsLoaded: wholeSets(line.load?.room ?? Number.POSITIVE_INFINITY, row),
    wayRoom: Math.max(line.wayRoom, row),
    setsBeforeHeads: wholeSets(line.closing?.room ?? Number.POSITIVE_INFINITY, lanes),
    setsBeforeTakeOff: wholeSets(line.takeOff?.room ?? Number.POSITIVE_INFINITY, lanes),
    rowsAreSets: row === lanes,
  };
};

/** Turns of the heads for so many bottles. */
export const turnsOf = (bottles: number, heads: number): number => headsTime(bottles, heads, 1);
