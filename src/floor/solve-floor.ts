import { fillRow } from '../hydraulics/fill-row.ts';
import type { RowFill } from '../hydraulics/filled-row.ts';
import { manifoldBalance } from '../hydraulics/manifold-balance.ts';
import { presetsForLevel } from '../hydraulics/preset-for-level.ts';
import { rowTable } from '../hydraulics/row-table.ts';
import { type RunInertia, runInertia } from '../hydraulics/run-inertia.ts';
import { type RunSurge, runSurge } from '../hydraulics/run-surge.ts';
import { stillSystem } from '../hydraulics/still-system.ts';
import { restStored, type Stored, startStored, tankOf } from '../hydraulics/stored.ts';
import { full, supplyPressure } from '../hydraulics/supply.ts';
import type { FillSystem } from '../hydraulics/system.ts';
import { hourEstimate } from '../line/hour-estimate.ts';
import { type HourRate, hourRate } from '../line/hour-rate.ts';
import type { LineTimes } from '../line/line-times.ts';
import { type LineSolution, solveLine } from '../line/solve-line.ts';
import { walkLine } from '../line/walk-line.ts';
import type { Walk } from '../line/walked-rows.ts';
import { lostTime } from '../sheets/water/inertia-lag.ts';
import type { FloorLane } from './read-lanes.ts';

/** Everything about one floor as plain SI numbers: what a solution needs and nothing of the book. */
export interface FloorModel {
  readonly system?: FillSystem;
  readonly lanes: readonly FloorLane[];
  readonly times: LineTimes;
  /** m3; absent where the format does not say */
  readonly level?: number;
  /** s */
  readonly agreedTime: number;
  /** Agreed rate, bottles a second. */
  readonly agreedRate?: number;
}

export interface FillSolution {
  readonly system: FillSystem;
  readonly row: RowFill;
  /** All lanes open, tank full: Pa gauge and m3/s. */
  readonly pressure: number;
  readonly flow: number;
  readonly inertia: RunInertia;
  /** s */
  readonly lag: number;
  readonly surge: RunSurge;
  /** Pressure at the manifold with all lanes shut, Pa gauge. */
  readonly shutPressure: number;
}

export interface HourSolution {
  readonly rate: HourRate;
  /** Absent where nothing can fall, so that every row is like the first. */
  readonly walk?: Walk;
  /** Most that was drawn and not made up, m3. */
  readonly drawnMost: number;
  /** When the tank first gave no more than its make-up, s. */
  readonly ranDry?: number;
}

export interface FloorSolution {
  readonly fill?: FillSolution;
  /** Lanes that never reach their counts. */
  readonly stuck?: readonly string[];
  readonly line?: LineSolution;
  /** Events that wait for each other. */
  readonly deadlock?: readonly string[];
  readonly hour?: HourSolution;
}

export const solveFill = (
  model: FloorModel,
): FillSolution | { readonly stuck: readonly string[] } | undefined => {
  if (model.system === undefined || model.system.lanes.length === 0) return undefined;
  let system = model.system;
  const open = model.lanes.some((lane) => lane.presetPath === undefined);
  let row: ReturnType<typeof fillRow>;
  if (open) {
    if (model.level === undefined) return undefined;
    const found = presetsForLevel(system, model.level, {
      keep: (i) => model.lanes[i]!.presetPath !== undefined,
    });
    if (found === undefined) return { stuck: system.lanes.map((lane) => lane.tag) };
    system = { ...system, lanes: system.lanes.map((lane, i) => ({ ...lane, preset: found.presets[i]! })) };
    row = found.row;
  } else row = fillRow(system, startStored(system.source));
  if ('stuck' in row) return { stuck: row.lanes };
  const { pressure, flow } = manifoldBalance(system);
  const inertia = runInertia(system, flow);
  return {
    system,
    row,
    pressure,
    flow,
    inertia,
    lag: lostTime(Number.POSITIVE_INFINITY, inertia.timeConstant),
    surge: runSurge(system, row),
    shutPressure: supplyPressure(system, 0, full),
  };
};

const solveHour = (model: FloorModel, fill: FillSolution, line: LineSolution): HourSolution => {
  const { source, liquid } = fill.system;
  const tank = tankOf(source);
  const vessel = source.kind === 'pumped' && source.vessel !== undefined;
  const finite =
    tank !== undefined && (tank.area < Number.POSITIVE_INFINITY || tank.usable < Number.POSITIVE_INFINITY);
  const even = { rate: { mean: line.rate, worst: line.rate } };
  if (!vessel && !finite) return { ...even, drawnMost: 0 };
  const rest = (stored: Stored, seconds: number): Stored =>
    restStored(source, liquid.density, stored, seconds);
  if (!vessel && fill.row.ranDry === undefined) {
    // made up again before the next row: every row is like the first
    const again = rest(fill.row.stored, line.period - fill.row.drawTime);
    if (again.drawn === 0) return { ...even, drawnMost: fill.row.stored.drawn };
  }
  const walk = walkLine(
    line.times,
    line.graph,
    { row: rowTable(fill.system), start: startStored(source), rest },
    model.agreedTime,
  );
  const drawn = walk.fills.reduce((most, each) => Math.max(most, each.drawn), 0);
  const ranDry = walk.fills.find((each) => each.ranDry !== undefined)?.ranDry ?? walk.stuck?.at;
  // a row that can't end has taken all that there was
  const drawnMost = walk.stuck !== undefined && tank !== undefined ? Math.min(tank.usable, 1e9) : drawn;
  return {
    rate: hourRate(walk, line.times.fill!.lanes, model.agreedTime),
    walk,
    drawnMost,
    ...(ranDry === undefined ? {} : { ranDry }),
  };
};

/** Shares of what may be drawn at which the fill is solved for a rough hour; between them a parabola. */
const levels = [0, 0.5, 1] as const;

/**
 * The hour of a tank that falls, from three rows: for the difference of two like floors.
 *
 * Returns  undefined where the level moves much within a row
 */
const roughHour = (model: FloorModel, fill: FillSolution, line: LineSolution): HourSolution | undefined => {
  const tank = tankOf(fill.system.source);
  if (tank === undefined) return undefined;
  if (tank.area === Number.POSITIVE_INFINITY && tank.usable === Number.POSITIVE_INFINITY) {
    return { rate: { mean: line.rate, worst: line.rate }, drawnMost: 0 };
  }
  const { drawn: draw } = fill.row;
  const net = draw / line.period - tank.makeUp;
  const reach = Math.min(tank.usable, Math.max(draw, net * model.agreedTime));
  const periods: number[] = [];
  for (const share of levels) {
    const still = stillSystem(fill.system, draw, share * reach);
    const row = still === undefined ? undefined : fillRow(still, startStored(still.source));
    if (row === undefined) return undefined;
    if ('stuck' in row) periods.push(Number.POSITIVE_INFINITY);
    else {
      const there = solveLine({ ...line.times, fill: { ...line.times.fill!, filling: row.fillTime } });
      if (there === undefined || 'deadlock' in there) return undefined;
      periods.push(there.period);
    }
  }
  const [first = 0, middle = 0, last = 0] = periods;
  if (!Number.isFinite(last)) return undefined;
  const periodAt = (drawn: number): number => {
    const x = reach > 0 ? Math.min(1, drawn / reach) : 0;
    return first * (2 * x - 1) * (x - 1) + middle * 4 * x * (1 - x) + last * x * (2 * x - 1);
  };
  return hourEstimate(
    { periodAt, lanes: line.times.fill!.lanes, draw, makeUp: tank.makeUp, usable: tank.usable },
    model.agreedTime,
  );
};

/** Parts of an earlier solution that a change does not touch. */
export interface LikeBefore {
  readonly fill?: FillSolution;
  /** Taken over where the make-up still covers the draw, so that no row differs from another. */
  readonly hour?: HourSolution;
  /** The hour as a flow instead of row by row: for the difference of two like floors. */
  readonly roughHour?: boolean;
  /** The hour is not asked for: whoever looks at the fill alone need not walk it. */
  readonly noHour?: boolean;
}

/**
 * What one floor makes the line do.
 *
 * Method   fill: the row of bottles event by event; line: the longest mean cycle with that fill and its lag;
 *          hour: row by row while tank and vessel move
 * Symbols  before  parts of an earlier solution that still hold
 * Returns  what can be computed; parts whose inputs are missing are absent
 */
export const solveFloor = (model: FloorModel, before: LikeBefore = {}): FloorSolution => {
  const fill = before.fill ?? solveFill(model);
  if (fill === undefined) {
    // without a fill the washer and the closing station can still be looked at
    const { fill: _, ...others } = model.times;
    const line = model.times.fill === undefined ? solveLine(others) : undefined;
    return line === undefined || 'deadlock' in line ? { ...line } : { line };
  }
  if ('stuck' in fill) return fill;
  const station = model.times.fill!;
  const times: LineTimes = {
    ...model.times,
    fill: { ...station, lag: fill.lag, filling: fill.row.fillTime, lanes: fill.system.lanes.length },
  };
  const line = solveLine(times);
  if (line === undefined) return { fill };
  if ('deadlock' in line) return { fill, ...line };
  if (before.noHour === true) return { fill, line };
  const makeUp = tankOf(fill.system.source)?.makeUp ?? Number.POSITIVE_INFINITY;
  const still = before.hour !== undefined && (fill.row.drawn / line.period) * (1 + 1e-9) <= makeUp;
  const hour = still
    ? { rate: { mean: line.rate, worst: line.rate }, drawnMost: before.hour.drawnMost }
    : ((before.roughHour === true ? roughHour(model, fill, line) : undefined) ??
      solveHour(model, fill, line));
  return { fill, line, hour };
};
