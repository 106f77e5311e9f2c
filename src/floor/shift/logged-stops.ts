import type { Book } from '../../book/index.ts';
import { type LineStop, type ShiftLine, type StopCause, workPerBottle } from '../../line/shift/index.ts';
import { meanTimeBetweenStops } from '../../sheets/rate/mean-time-between-stops.ts';
import { learnt } from '../../statistics/event-rate.ts';
import type { LoggedRun } from './shift-records.ts';

/** A cause as a log of runs has it. */
export interface LoggedCause {
  readonly cause: string;
  readonly stops: number;
  /** s of work, or by the clock, in which they came. */
  readonly running: number;
  /** Mean s between two in these runs, with the interval that holds it; and s to clear one. */
  readonly between: number;
  readonly low: number;
  readonly high: number;
  readonly clear: number;
  /** s that the shift takes, with what is declared. */
  readonly taken: { readonly between: number; readonly clear: number };
}

/** What runs whose stops were written down say of what makes the line stand. */
export interface StopLog {
  readonly runs: number;
  /** s of them, stops and all. */
  readonly seconds: number;
  readonly causes: readonly LoggedCause[];
  /** Tags of causes that did not come in these runs: these came free of them after what is declared. */
  readonly unseen: readonly string[];
  /** Causes of the log that the book does not name here, with their stops and s: they are left out. */
  readonly unknown: readonly { readonly cause: string; readonly stops: number; readonly seconds: number }[];
}

/** Stops as which a declared time counts. */
const declaredStops = 1;

type Stop = NonNullable<LoggedRun['stops']>[number];

const spanOf = ({ from, to }: { readonly from: string; readonly to: string }) => {
  const [start, end] = [Date.parse(from), Date.parse(to)];
  return { start, end, seconds: Math.max(0, end - start) / 1000 || 0 };
};

/** s of a stop that lie in its run. */
const stoodIn = (stop: Stop, run: LoggedRun): number => {
  const [a, b] = [spanOf(stop), spanOf(run)];
  return Math.max(0, Math.min(a.end, b.end) - Math.max(a.start, b.start)) / 1000 || 0;
};

const plain = (written: string): string => written.trim().toLowerCase();

/** Tags of causes by tag and by name: who writes a log knows the one or the other. */
const tagsOf = (book: Book): ReadonlyMap<string, string> => {
  const { stations = [], stopDevices = [] } = book.line ?? {};
  const causes = [
    ...stations.flatMap(({ stops = [] }) => stops),
    ...stations.flatMap((station) => (station.kind === 'closing' ? (station.chute?.stops ?? []) : [])),
    ...(book.floors ?? []).flatMap(({ stops = [] }) => stops.flatMap((each) => each.stops ?? [])),
    ...stopDevices,
  ];
  return new Map(
    causes.flatMap(({ tag, name }) =>
      [tag, name].flatMap((written) => (written === undefined ? [] : [[plain(written), tag] as const])),
    ),
  );
};

/**
 * The line with its stops as runs were logged and as the book declares them, together.
 *
 * Method   of each cause the stops and the time that they took in all runs: between = running/stops, clear = time/stops.
 *          What counts while its station works came in the time that the station works for the bottles of the runs; what
 *          goes by the clock, in the time of the runs less its own stops. What is declared counts as one stop, after the
 *          time and with the clearing that it names: the rate is (1 + stops)/(declared + running), also where none came
 * Symbols  confidence  of the interval of the time between, two-sided
 * Returns  the line as it was where no run of this floor and format was logged
 * Assumes  who declares a time knows it about as well as who met one stop
 * Source   `learnt`, with the information of one observation; `rate/mean-time-between-stops`
 */
export const loggedLine = (
  book: Book,
  line: ShiftLine,
  runs: readonly LoggedRun[],
  confidence: number,
): { readonly line: ShiftLine; readonly log?: StopLog } => {
  const logged = runs.filter((run) => run.stops !== undefined && spanOf(run).seconds > 0);
  if (logged.length === 0) return { line };
  const seconds = logged.reduce((sum, run) => sum + spanOf(run).seconds, 0);
  const bottles = logged.reduce((sum, run) => sum + run.bottles, 0);
  const tags = tagsOf(book);
  const met = new Map<string, { stops: number; seconds: number }>();
  for (const run of logged) {
    for (const stop of run.stops ?? []) {
      const cause = tags.get(plain(stop.cause)) ?? stop.cause;
      const sum = met.get(cause) ?? { stops: 0, seconds: 0 };
      met.set(cause, { stops: sum.stops + 1, seconds: sum.seconds + stoodIn(stop, run) });
    }
  }
  const causes: LoggedCause[] = [];
  const unseen = new Set<string>();
  const told = new Set<string>();
  const asLogged = <S extends StopCause | LineStop>(stop: S, running: number): S => {
    const found = met.get(stop.cause);
    const known = learnt(
      { events: declaredStops, exposure: declaredStops * stop.between },
      { events: found?.stops ?? 0, exposure: Math.max(0, running) },
    );
    const between = known.exposure / known.events;
    if (found === undefined || !(running > 0)) {
      unseen.add(stop.cause);
      return { ...stop, between };
    }
    const isTimed = found.seconds > 0;
    const clear = isTimed ? found.seconds / found.stops : stop.clear;
    const taken = {
      between,
      clear: isTimed ? (declaredStops * stop.clear + found.seconds) / known.events : stop.clear,
    };
    const { mean, low, high } = meanTimeBetweenStops({
      running,
      stops: found.stops,
      endedBy: 'time',
      confidence,
    });
    if (!told.has(stop.cause)) {
      causes.push({ cause: stop.cause, stops: found.stops, running, between: mean, low, high, clear, taken });
    }
    told.add(stop.cause);
    return { ...stop, ...taken };
  };
  const byClock = (cause: string): number => seconds - (met.get(cause)?.seconds ?? 0);
  const stopsOf = (stops: readonly StopCause[], work: number | undefined): readonly StopCause[] =>
    stops.map((stop) =>
      asLogged(stop, work === undefined || stop.counts === 'clock' ? byClock(stop.cause) : work * bottles),
    );
  const work = workPerBottle(line);
  const at = <S extends { readonly stops?: readonly StopCause[] }>(
    station: S,
    seconds: number | undefined,
  ): S => (station.stops === undefined ? station : { ...station, stops: stopsOf(station.stops, seconds) });
  const { load, washer, discharge, conveyors, fill, closing, takeOff } = line;
  const found: ShiftLine = {
    ...line,
    ...(load === undefined ? {} : { load: at(load, work.load) }),
    ...(washer === undefined ? {} : { washer: at(washer, work.washer) }),
    ...(discharge === undefined ? {} : { discharge: at(discharge, work.discharge) }),
    conveyors: conveyors.map((conveyor) => at(conveyor, undefined)),
    ...(fill === undefined ? {} : { fill: at(fill, work.fill) }),
    ...(closing === undefined
      ? {}
      : {
          closing: {
            ...at(closing, work.closing),
            ...(closing.chute === undefined ? {} : { chute: at(closing.chute, work.sorter) }),
          },
        }),
    ...(takeOff === undefined ? {} : { takeOff: at(takeOff, work.takeOff) }),
    lineStops: line.lineStops.map((stop) => asLogged(stop, byClock(stop.cause))),
  };
  return {
    line: found,
    log: {
      runs: logged.length,
      seconds,
      causes,
      unseen: [...unseen],
      unknown: [...met].filter(([cause]) => !told.has(cause)).map(([cause, sum]) => ({ cause, ...sum })),
    },
  };
};
