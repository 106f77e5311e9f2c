import type { ChuteTrace } from './chute-at.ts';
import { isPlain } from './held-by.ts';
import { notSetUp, type RowEvents, ruled, type SetEvents, standing, supplied } from './shift-events.ts';
import type { ShiftLayout } from './shift-layout.ts';
import type { ShiftLine } from './shift-line.ts';
import { ShiftMachine } from './shift-machine.ts';
import type { StationMoment } from './shift-moment.ts';
import type { LostStep, StationState } from './shift-result.ts';
import { capWait, ownStop } from './station-clocks.ts';

/** One shift with all its moments. */
export interface ShiftTrace {
  readonly line: ShiftLine;
  readonly layout: ShiftLayout;
  /** s, warm-up and shift */
  readonly end: number;
  readonly rows: RowEvents;
  readonly sets: SetEvents;
  /** Rows that were loaded, strokes, and sets. */
  readonly loadedRows: number;
  readonly strokes: number;
  readonly setCount: number;
  /** What each station did, without a gap, from the start of the shift to its end. */
  readonly periods: readonly { readonly station: string; readonly of: readonly StationMoment[] }[];
  readonly chute?: ChuteTrace;
}

/** Less than this is rounding. */
const noTime = 1e-9;

/** Periods of a station, one after the other. */
class Periods {
  readonly of: StationMoment[] = [];
  private readonly machine: ShiftMachine;
  private readonly number: number;
  private readonly station: string;

  constructor(machine: ShiftMachine, number: number) {
    this.machine = machine;
    this.number = number;
    this.station = machine.layout.tags[number]!;
  }

  add(
    state: StationState,
    since: number,
    until: number,
    more: Pick<StationMoment, 'step' | 'waitsFor'>,
  ): void {
    const from = Math.max(since, this.of.at(-1)?.until ?? 0);
    if (until - from > noTime) this.of.push({ station: this.station, state, since: from, until, ...more });
  }

  /** Work with the stops in it. */
  work(step: LostStep, since: number, until: number, firstStop: number): void {
    const { log } = this.machine.clocks;
    const { causes, sorter, tags } = this.machine.layout;
    let at = since;
    for (let i = firstStop; i >= 0 && i < log.count; i++) {
      if (log.station[i] !== this.number || log.to[i]! <= at) continue;
      if (log.from[i]! >= until) break;
      this.add('running', at, log.from[i]!, { step });
      const state = log.kind[i] === capWait ? 'caps' : 'stopped';
      this.add(state, Math.max(at, log.from[i]!), Math.min(until, log.to[i]!), {
        waitsFor: causes[log.cause[i]!]?.cause ?? tags[sorter]!,
      });
      at = log.to[i]!;
    }
    this.add('running', at, until, { step });
  }
}

/** When the sorter stood, in the order of time. */
const sorterStops = ({ clocks: { log }, layout }: ShiftMachine): ChuteTrace['stops'] =>
  Array.from({ length: log.count }, (_, i) => i)
    .filter((i) => log.station[i] === layout.sorter && log.kind[i] === ownStop)
    .map((i) => ({ from: log.from[i]!, to: log.to[i]! }));

/** One shift of a line, kept whole. */
export const traceShift = (line: ShiftLine, seed: number, shift: number): ShiftTrace => {
  const machine = new ShiftMachine(line);
  const knots = machine.traceChute();
  machine.run(seed, shift);
  const { layout, rowCount, setCount, loadedRows } = machine;
  const { rows, sets } = machine.events;
  const end = line.warmUp + line.duration;
  const tag = (...stations: readonly number[]): string =>
    layout.tags[stations.find((station) => station >= 0) ?? layout.core]!;
  const periods: { station: string; of: readonly StationMoment[] }[] = [];
  const trace = (station: number, fill: (periods: Periods) => void, after: StationState): void => {
    if (station < 0) return;
    const of = new Periods(machine, station);
    fill(of);
    of.add(after, of.of.at(-1)?.until ?? 0, Math.max(end, of.of.at(-1)?.until ?? 0), {});
    periods.push({ station: layout.tags[station]!, of: of.of });
  };

  trace(
    layout.load,
    (of) => {
      for (let i = 0; i < loadedRows; i++) {
        of.add('blocked', 0, rows.loadStart[i]!, {
          waitsFor: tag(layout.washer, layout.fill, layout.closing),
        });
        of.work('load', rows.loadStart[i]!, rows.loaded[i]!, rows.loadStop[i]!);
      }
    },
    'blocked',
  );
  trace(
    layout.washer,
    (of) => {
      for (let i = 0; i < rowCount; i++) {
        const why = rows.whyStroke[i]!;
        const other = line.holds[rows.strokeRule[i]!];
        const isHeld = why === ruled || other !== undefined;
        const state = isHeld ? 'held' : why === supplied ? 'starved' : 'blocked';
        const set = rows.strokeFor[i]!;
        const rule = line.holds
          .filter(isPlain)
          .find(({ until }) =>
            why !== ruled
              ? false
              : rows.stroke[i] === (until === 'release' ? sets.released[set] : sets.filled[set]),
          );
        const waitsFor =
          other !== undefined
            ? other.rule
            : why === supplied
              ? tag(layout.load)
              : why === ruled
                ? (rule?.rule ?? tag(layout.fill))
                : why === notSetUp
                  ? tag(layout.discharge)
                  : why === standing
                    ? tag(...layout.conveyors)
                    : tag(layout.fill, layout.closing, layout.takeOff);
        of.add(state, 0, rows.stroke[i]!, { waitsFor });
        of.work('stroke', rows.stroke[i]!, rows.stroked[i]!, rows.washStop[i]!);
        of.work('dwell', rows.stroked[i]!, rows.ready[i]!, rows.washStop[i]!);
      }
    },
    'blocked',
  );
  trace(
    layout.discharge,
    (of) => {
      for (let i = 0; i < rowCount; i++) {
        if (rows.out[i]! + rows.fallen[i]! === 0) continue;
        of.add('starved', 0, rows.stroked[i]!, { waitsFor: tag(layout.washer, layout.load) });
        of.work('setUp', rows.stroked[i]!, rows.discharged[i]!, rows.dischargeStop[i]!);
      }
    },
    'starved',
  );
  trace(
    layout.fill,
    (of) => {
      for (let j = 0; j < setCount; j++) {
        const rule = line.holds[sets.startRule[j]!];
        const free = rule === undefined ? sets.start[j]! : sets.startFree[j]!;
        of.add('starved', 0, free, { waitsFor: tag(layout.washer, layout.load) });
        if (rule !== undefined) of.add('held', 0, sets.start[j]!, { waitsFor: rule.rule });
        of.work('travelIn', sets.start[j]!, sets.opened[j]!, sets.fillStop[j]!);
        of.work('fill', sets.opened[j]!, sets.filled[j]!, sets.fillStop[j]!);
        of.work('lower', sets.filled[j]!, sets.released[j]!, sets.fillStop[j]!);
        const waitsFor = tag(layout.closing, layout.takeOff);
        if (sets.clearStart[j]! > sets.released[j]!) of.add('blocked', 0, sets.clearStart[j]!, { waitsFor });
        of.work('clearOut', sets.clearStart[j]!, sets.cleared[j]!, sets.fillStop[j]!);
      }
    },
    'starved',
  );
  trace(
    layout.closing,
    (of) => {
      for (let j = 0; j < setCount; j++) {
        const rule = line.holds[sets.capRule[j]!];
        const free = rule === undefined ? sets.capStart[j]! : sets.capFree[j]!;
        of.add('starved', 0, free, { waitsFor: tag(layout.fill, layout.washer, layout.load) });
        if (rule !== undefined) of.add('held', 0, sets.capStart[j]!, { waitsFor: rule.rule });
        of.work('cap', sets.capStart[j]!, sets.capped[j]!, sets.capStop[j]!);
        if (sets.left[j]! > sets.capped[j]!)
          of.add('blocked', 0, sets.left[j]!, { waitsFor: tag(layout.takeOff) });
      }
    },
    'starved',
  );
  trace(
    layout.takeOff,
    (of) => {
      for (let j = 0; j < setCount; j++) {
        of.add('starved', 0, sets.takeStart[j]!, {
          waitsFor: tag(layout.closing, layout.fill, layout.washer, layout.load),
        });
        of.work('takeOff', sets.takeStart[j]!, sets.taken[j]!, sets.takeStop[j]!);
      }
    },
    'starved',
  );
  const chute = line.closing?.chute;
  return {
    line,
    layout,
    end,
    rows,
    sets,
    loadedRows,
    strokes: rowCount,
    setCount,
    periods,
    ...(chute === undefined || knots === undefined
      ? {}
      : { chute: { chute, knots, stops: sorterStops(machine) } }),
  };
};
