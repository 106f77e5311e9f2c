import type { TimeLeft } from '../line/time-left-for-fill.ts';
import { bottleRateSheet } from '../sheets/rate/bottle-rate.ts';
import { fillStationTimeSheet } from '../sheets/rate/fill-station-time.ts';
import { fillTimeLeftSheet } from '../sheets/rate/fill-time-left.ts';
import { indexPeriodSheet } from '../sheets/rate/index-period.ts';
import { loopPeriodSheet } from '../sheets/rate/loop-period.ts';
import { meanDrawSheet } from '../sheets/rate/mean-draw.ts';
import { meanOfRunSheet } from '../sheets/rate/mean-of-run.ts';
import { stationRateSheet } from '../sheets/rate/station-rate.ts';
import { drawPerBottle, slowestLane } from './figure-values.ts';
import type { FloorInputs } from './read-floor.ts';
import type { FloorSolution } from './solve-floor.ts';
import { stationOf } from './station-of.ts';
import type { LaneTrace } from './trace-lanes.ts';
import { at, outOf, type SupplyTrace } from './trace-supply.ts';
import type { Tracer } from './tracer.ts';
import { traceDelay } from './utilities/air/index-delay.ts';

export interface LineTrace {
  readonly washerIndex?: number;
  readonly fillStationTime?: number;
  readonly cycle?: number;
  readonly runningRate?: number;
  readonly hourRate?: number;
  readonly worstRow?: number;
  readonly fillTimeLeft?: number;
  readonly meanDraw?: number;
  readonly washerRate?: number;
  readonly closingRate?: number;
}

/** Workings of the line: stations, the loop that decides, the three rates. */
export const traceLine = (
  tracer: Tracer,
  inputs: FloorInputs,
  solution: FloorSolution,
  supply: SupplyTrace | undefined,
  lanes: readonly LaneTrace[],
  left: TimeLeft | undefined,
): LineTrace => {
  const { fill, line, hour } = solution;
  const { times, agreedRate, agreedTime } = inputs.model;
  const read = inputs.forLine;
  const { book } = read;
  const found: { -readonly [K in keyof LineTrace]?: number | undefined } = {};

  const washer = stationOf(book, 'washer');
  if (washer !== undefined && times.washer !== undefined) {
    const where = { floor: inputs.floorNumber, formatPath: inputs.formatPath };
    const { cylinders } = washer.station;
    const added =
      inputs.timesRead.delay.added === 0 ? undefined : traceDelay(tracer, read, where, cylinders ?? []);
    found.washerIndex = tracer.trace(indexPeriodSheet, {
      ...(added === undefined ? {} : { added }),
      stroke: at(read.number(`${washer.path}/stroke`, 'time') ?? 0, `${washer.path}/stroke`),
      dwell: at(read.number(`${washer.path}/dwell`, 'time') ?? 0, `${washer.path}/dwell`),
      stretch: { value: inputs.timesRead.stretch },
      dwellBy: { value: washer.station.dwellBy ?? 'timer', from: { path: `${washer.path}/dwellBy` } },
    });
    found.washerRate = tracer.trace(bottleRateSheet, {
      bottles: { value: times.washer.row, from: { path: `${washer.path}/row` } },
      period: outOf(tracer, found.washerIndex, 'index', times.washer.stroke + times.washer.dwell),
    });
  }
  const closing = stationOf(book, 'closing');
  if (closing !== undefined && times.closing !== undefined) {
    found.closingRate = tracer.trace(stationRateSheet, {
      heads: { value: times.closing.heads, from: { path: `${closing.path}/heads` } },
      perBottle: at(times.closing.perBottle, `${closing.path}/perBottle`),
      lanes: { value: line?.times.fill?.lanes ?? times.fill?.lanes ?? 1 },
    });
  }
  const station = line?.times.fill;
  const { stationPath } = inputs;
  if (fill !== undefined && station !== undefined && stationPath !== undefined) {
    const slowest = fill.row.lanes.indexOf(slowestLane(fill));
    const part = (name: 'travelIn' | 'lift' | 'drip' | 'lower' | 'clearOut') =>
      at(station[name], `${stationPath}/${name}`, read);
    found.fillStationTime = tracer.trace(fillStationTimeSheet, {
      travelIn: part('travelIn'),
      lift: part('lift'),
      lag: outOf(tracer, supply?.lag, 'lostInAll', station.lag),
      filling: outOf(tracer, lanes[slowest]?.fill, 'fillTime', station.filling),
      drip: part('drip'),
      lower: part('lower'),
      clearOut: part('clearOut'),
    });
    if (agreedRate !== undefined) {
      found.meanDraw = tracer.trace(meanDrawSheet, {
        rate: at(agreedRate, inputs.ratePath),
        volume: { value: drawPerBottle(fill), from: { solved: 'row' } },
      });
    }
  }
  if (line !== undefined) {
    const { loop } = line.cycle;
    const steps = loop.flatMap((arc) => arc.steps);
    found.cycle = tracer.trace(
      loopPeriodSheet,
      {
        steps: { value: steps.map((step) => step.seconds), from: { solved: 'loop' } },
        blocks: { value: loop.reduce((sum, arc) => sum + arc.lag, 0), from: { solved: 'loop' } },
        fills: { value: line.graph.fills },
      },
      { output: 'period', value: line.period },
    );
    const lanesOf = line.graph.bottles / line.graph.fills;
    found.runningRate = tracer.trace(
      bottleRateSheet,
      { bottles: { value: lanesOf }, period: outOf(tracer, found.cycle, 'period', line.period) },
      { output: 'rate', value: line.rate },
    );
    if (hour !== undefined) {
      found.hourRate = tracer.trace(meanOfRunSheet, {
        bottles: { value: hour.rate.mean * agreedTime, from: { solved: 'hour' } },
        duration: at(agreedTime, '/agreement/acceptanceRun'),
      });
      if (hour.rate.worst > 0) {
        found.worstRow = tracer.trace(bottleRateSheet, {
          bottles: { value: lanesOf },
          period: { value: lanesOf / hour.rate.worst, from: { solved: 'hour' } },
        });
      }
    }
    if (left !== undefined && agreedRate !== undefined) {
      found.fillTimeLeft = tracer.trace(fillTimeLeftSheet, {
        rate: at(agreedRate, inputs.ratePath),
        bottles: { value: line.times.fill?.lanes ?? lanesOf },
        otherSteps: {
          value: [...left.others, left.fillsInLoop * (fill?.lag ?? 0)],
          from: { solved: 'loop' },
        },
        blocks: { value: left.blocks },
        fills: { value: left.fills },
        fillsInLoop: { value: left.fillsInLoop },
      });
    }
  }
  return Object.fromEntries(
    Object.entries(found).filter(([, working]) => working !== undefined),
  ) as LineTrace;
};
