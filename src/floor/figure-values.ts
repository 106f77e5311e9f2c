import type { LaneFill } from '../hydraulics/filled-row.ts';
import { tankOf } from '../hydraulics/stored.ts';
import { type TimeLeft, timeLeftForFill } from '../line/time-left-for-fill.ts';
import type { Kind } from '../quantity/kinds.ts';
import { bottleRate } from '../sheets/rate/bottle-rate.ts';
import { fillStationTime } from '../sheets/rate/fill-station-time.ts';
import { meanDraw } from '../sheets/rate/mean-draw.ts';
import { stationRate } from '../sheets/rate/station-rate.ts';
import { meanOverflow } from '../sheets/water/mean-overflow.ts';
import { pipeVelocity } from '../sheets/water/pipe-velocity.ts';
import { tankLevel } from '../sheets/water/tank-level.ts';
import type { FloorLane } from './read-lanes.ts';
import type { FillSolution, FloorModel, FloorSolution } from './solve-floor.ts';

/** Every figure of a floor with the kind of quantity that it is. */
export const figureKinds = {
  agreedRate: 'rate',
  runningRate: 'rate',
  hourRate: 'rate',
  worstRow: 'rate',
  shiftOutput: 'count',
  cycle: 'time',
  washerIndex: 'time',
  fillStationTime: 'time',
  fillTime: 'time',
  fillTimeLeft: 'time',
  lagTime: 'time',
  manifoldPressure: 'gaugePressure',
  manifoldPressureNeeded: 'gaugePressure',
  manifoldFlow: 'volumeFlow',
  runVelocity: 'velocity',
  leastVolume: 'volume',
  level: 'volume',
  overflow: 'volume',
  jetSpeed: 'velocity',
  jetAllowed: 'velocity',
  surgePressure: 'gaugePressure',
  rating: 'gaugePressure',
  tankLow: 'length',
  tankOutlet: 'length',
  tankLeft: 'volume',
  tankEmpty: 'volume',
  runDryAfter: 'time',
  makeUp: 'volumeFlow',
  meanDraw: 'volumeFlow',
  washerRate: 'rate',
  closingRate: 'rate',
  takeOffRate: 'rate',
} as const satisfies Record<string, Kind>;

export type FigureId = keyof typeof figureKinds;
export type FigureValues = { readonly [K in FigureId]?: number };

/** What the floor's book says beside the model: limits that are not part of the physics. */
export interface FloorLimits {
  /** m/s */
  readonly jetBeforeCovered?: number;
  readonly jetAfterCovered?: number;
  /** Pa gauge */
  readonly rating?: number;
  /** Height of the tank's outlet, m; absent where it is not known */
  readonly outlet?: number;
  readonly makeUp?: number;
}

/** Slowest lane of a row. */
export const slowestLane = (fill: FillSolution): LaneFill =>
  fill.row.lanes.reduce((slowest, lane) => (lane.fillTime > slowest.fillTime ? lane : slowest));

export interface WorstJet {
  readonly speed: number;
  readonly allowed?: number;
  readonly lane: FloorLane;
  readonly flow: number;
  readonly covered: boolean;
}

/** The jet that comes closest to what the product allows, or the fastest where nothing is said. */
export const worstJet = (
  fill: FillSolution,
  lanes: readonly FloorLane[],
  limits: FloorLimits,
): WorstJet | undefined => {
  let worst: WorstJet | undefined;
  let most = Number.NEGATIVE_INFINITY;
  for (const [i, lane] of lanes.entries()) {
    const row = fill.row.lanes[i];
    if (row === undefined || lane.nozzleBore === undefined) continue;
    for (const covered of [false, true]) {
      const flow = covered ? row.flowCovered : row.flowFree;
      if (flow <= 0) continue;
      const speed = pipeVelocity(flow, lane.nozzleBore);
      const allowed = covered ? limits.jetAfterCovered : limits.jetBeforeCovered;
      const ratio = allowed === undefined ? speed * 1e-6 : speed / allowed;
      if (ratio > most) {
        most = ratio;
        worst = { speed, lane, flow, covered, ...(allowed === undefined ? {} : { allowed }) };
      }
    }
  }
  return worst;
};

/** What the line draws a bottle, m3: overflow and all. */
export const drawPerBottle = (fill: FillSolution): number =>
  fill.row.lanes.reduce((sum, lane) => sum + lane.volume, 0) / fill.row.lanes.length;

const defined = (values: { readonly [K in FigureId]?: number | undefined }): FigureValues => {
  const kept: { -readonly [K in FigureId]?: number } = {};
  for (const id in values) {
    const value = values[id as FigureId];
    if (value !== undefined && Number.isFinite(value)) kept[id as FigureId] = value;
  }
  return kept;
};

/**
 * The figures of a floor from its solution.
 *
 * Symbols  known  the time that the agreed rate leaves, where it has been found already
 * Returns  those that can be computed; `manifoldPressureNeeded` only on demand, since it is a search of its own
 */
export const figureValues = (
  model: FloorModel,
  solution: FloorSolution,
  limits: FloorLimits,
  known?: { readonly timeLeft: TimeLeft | undefined },
): FigureValues => {
  const { fill, line, hour } = solution;
  const { times, agreedRate, level } = model;
  const station = line?.times.fill;
  const tank = fill === undefined ? undefined : tankOf(fill.system.source);
  const left =
    known === undefined
      ? agreedRate === undefined
        ? undefined
        : timeLeftForFill(times, agreedRate)
      : known.timeLeft;
  const jet = fill === undefined ? undefined : worstJet(fill, model.lanes, limits);
  const drawnMost = hour?.drawnMost ?? 0;
  const gravity = fill?.system.source.kind === 'gravity' ? fill.system.source : undefined;
  const tanked = tank !== undefined && tank.area < Number.POSITIVE_INFINITY;
  const stored = tank !== undefined && gravity === undefined && tank.usable < Number.POSITIVE_INFINITY;
  const lanes = station?.lanes ?? 1;
  const { washer, closing, takeOff } = times;
  const runVelocity =
    fill === undefined
      ? undefined
      : fill.system.run.reduce(
          (most, piece) =>
            piece.kind === 'pipe' ? Math.max(most, pipeVelocity(fill.flow, piece.bore)) : most,
          0,
        );
  return defined({
    agreedRate,
    runningRate: line?.rate,
    hourRate: hour?.rate.mean,
    worstRow: hour?.rate.worst,
    cycle: line?.period,
    washerIndex: washer === undefined ? undefined : washer.stroke + washer.dwell,
    fillStationTime: station === undefined ? undefined : fillStationTime(station),
    fillTime: fill?.row.fillTime,
    fillTimeLeft: left === undefined ? undefined : left.left - (fill?.lag ?? 0),
    lagTime: fill?.lag,
    manifoldPressure: fill?.pressure,
    manifoldFlow: fill?.flow,
    runVelocity: runVelocity === 0 ? undefined : runVelocity,
    leastVolume:
      fill === undefined
        ? undefined
        : fill.row.lanes.reduce((least, lane) => Math.min(least, lane.volume), Number.POSITIVE_INFINITY),
    level,
    overflow:
      fill === undefined || level === undefined
        ? undefined
        : meanOverflow(
            fill.row.lanes.map((lane) => lane.volume),
            level,
          ),
    jetSpeed: jet?.speed,
    jetAllowed: jet?.allowed,
    surgePressure: fill === undefined ? undefined : fill.shutPressure + fill.surge.rise,
    rating: limits.rating,
    tankLow:
      gravity !== undefined && tanked && hour !== undefined
        ? tankLevel(gravity.surface, drawnMost, gravity.tank.area)
        : undefined,
    tankOutlet: limits.outlet,
    tankLeft: stored && hour !== undefined ? tank.usable - drawnMost : undefined,
    tankEmpty: stored ? 0 : undefined,
    runDryAfter: hour?.ranDry,
    makeUp: limits.makeUp,
    meanDraw:
      fill === undefined || agreedRate === undefined ? undefined : meanDraw(agreedRate, drawPerBottle(fill)),
    washerRate: washer === undefined ? undefined : bottleRate(washer.row, washer.stroke + washer.dwell),
    closingRate: closing === undefined ? undefined : stationRate(lanes, closing.heads, closing.perBottle),
    takeOffRate: takeOff?.rate,
  });
};
