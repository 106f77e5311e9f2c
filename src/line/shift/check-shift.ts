import type { Problem } from '../../quantity/problem.ts';
import { lineGraph } from '../line-graph.ts';
import { waitingCircle } from '../waiting-circle.ts';
import type { Draw } from './draw.ts';
import { meanTimes } from './mean-times.ts';
import { meanOf } from './sampled.ts';
import { layOut } from './shift-layout.ts';
import type { ShiftLine } from './shift-line.ts';
import type { ShiftProblemCode } from './shift-problems.ts';
import type { LineStop, StopCause } from './stop-cause.ts';

type Found = Omit<Problem, 'code' | 'path'>;

/** What of the line waits for each other. */
const circleOf = (line: ShiftLine): readonly string[] => {
  const graph = lineGraph(meanTimes(line));
  return graph === undefined ? [] : waitingCircle(graph);
};

/** What is wrong with a line before it is run; paths are fields of the line such as `/closing/chute/low`. */
export const checkShift = (line: ShiftLine): readonly Problem[] => {
  const problems: Problem[] = [];
  const report = (code: ShiftProblemCode, path: string, found: Found = {}): void => {
    problems.push({ code, path, ...found });
  };
  const least = (path: string, given: number, bound = 0, above = false): void => {
    if (Number.isFinite(given) && (above ? given > bound : given >= bound)) return;
    report('SHIFT_OUT_OF_RANGE', path, { given, allowed: `${above ? '>' : '>='} ${bound}` });
  };
  const whole = (path: string, given: number, bound: number): void => {
    if (Number.isInteger(given) && given >= bound) return;
    report('SHIFT_NOT_WHOLE', path, { given, allowed: `whole, >= ${bound}` });
  };
  const share = (path: string, given: number, all = false): void => {
    if (given >= 0 && (all ? given <= 1 : given < 1)) return;
    report('SHIFT_SHARE', path, { given, allowed: all ? '0 to 1' : '0 to under 1' });
  };
  const room = (path: string, given: number, station: string): void => {
    if (!(given >= 1)) report('SHIFT_ROOM_ZERO', path, { given, parts: { station } });
  };
  const drawn = (path: string, draw: Draw): void => {
    if (typeof draw === 'number') least(path, draw);
    else if (draw.kind === 'exponential') least(`${path}/mean`, draw.mean);
    else if (draw.kind === 'uniform') {
      least(`${path}/low`, draw.low);
      least(`${path}/high`, draw.high, draw.low);
    } else {
      const { quantiles } = draw;
      const rise = quantiles.every((q, i) => Number.isFinite(q) && (i === 0 || q >= quantiles[i - 1]!));
      if (quantiles.length < 2 || !rise)
        report('SHIFT_QUANTILES', `${path}/quantiles`, { allowed: 'two or more that rise' });
    }
  };

  const names = new Set<string>();
  const stop = (path: string, { cause, between, clear, pattern }: StopCause | LineStop): void => {
    const parts = { cause };
    if (names.has(cause)) report('SHIFT_CAUSE_TWICE', `${path}/cause`, { given: cause });
    names.add(cause);
    if (!(between > 0)) report('SHIFT_BETWEEN_ZERO', `${path}/between`, { given: between, parts });
    if (!(clear > 0 && clear < Number.POSITIVE_INFINITY))
      report('SHIFT_CLEAR_ZERO', `${path}/clear`, { given: clear, parts });
    if (pattern?.kind !== 'geometric') return;
    const shortest = Math.min(between, clear);
    if (!(pattern.step > 0 && pattern.step <= shortest))
      report('SHIFT_STEP_LONG', `${path}/pattern/step`, {
        given: pattern.step,
        allowed: `> 0, <= ${shortest}`,
        parts,
      });
  };
  const stops = (path: string, causes: readonly StopCause[] = []): void =>
    causes.forEach((cause, i) => {
      stop(`${path}/stops/${i}`, cause);
    });

  least('/duration', line.duration, 0, true);
  least('/warmUp', line.warmUp);
  const { load, washer, discharge, conveyors, fill, closing, takeOff } = line;
  if (load !== undefined) {
    drawn('/load/seconds', load.seconds);
    share('/load/missing', load.missing);
    room('/load/room', load.room, (washer ?? fill ?? closing ?? takeOff ?? load).station);
    stops('/load', load.stops);
  }
  if (washer !== undefined) {
    whole('/washer/row', washer.row, 1);
    whole('/washer/rows', washer.rows, 0);
    least('/washer/stroke', washer.stroke);
    least('/washer/dwell', washer.dwell);
    stops('/washer', washer.stops);
    const rows = washer.zones.reduce((sum, zone) => sum + zone.rows, 0);
    if (rows > washer.rows)
      report('SHIFT_ZONES_LONG', '/washer/zones', { given: rows, allowed: `${washer.rows}` });
    washer.zones.forEach((zone, i) => {
      whole(`/washer/zones/${i}/rows`, zone.rows, 1);
      share(`/washer/zones/${i}/share`, zone.share, true);
      least(`/washer/zones/${i}/dead`, zone.dead);
      least(`/washer/zones/${i}/emptying`, zone.emptying);
    });
  }
  if (discharge !== undefined) {
    least('/discharge/seconds', discharge.seconds);
    share('/discharge/fallen', discharge.fallen);
    stops('/discharge', discharge.stops);
  }
  conveyors.forEach((conveyor, i) => {
    least(`/conveyors/${i}/seconds`, conveyor.seconds);
    stops(`/conveyors/${i}`, conveyor.stops);
  });
  if (fill !== undefined) {
    whole('/fill/lanes', fill.lanes, 1);
    for (const part of ['travelIn', 'lift', 'lag', 'drip', 'lower', 'clearOut'] as const) {
      least(`/fill/${part}`, fill[part]);
    }
    // what is added to a falling supply may be less as well as more
    if (fill.supply === undefined) drawn('/fill/filling', fill.filling);
    room('/wayRoom', line.wayRoom, fill.station);
    stops('/fill', fill.stops);
  }
  if (closing !== undefined) {
    whole('/closing/heads', closing.heads, 1);
    drawn('/closing/perBottle', closing.perBottle);
    if (fill !== undefined) room('/closing/room', closing.room, closing.station);
    least('/closing/transit', closing.transit);
    share('/closing/rejected', closing.rejected, true);
    stops('/closing', closing.stops);
    const { chute } = closing;
    if (chute !== undefined) {
      const path = '/closing/chute';
      least(`${path}/low`, chute.low);
      least(`${path}/start`, chute.start);
      least(`${path}/runUp`, chute.runUp);
      if (!(chute.high > chute.low))
        report('SHIFT_SENSORS_SWAPPED', `${path}/high`, { given: chute.high, parts: { low: chute.low } });
      if (chute.high < closing.heads)
        report('SHIFT_CHUTE_SMALL', `${path}/high`, { given: chute.high, parts: { heads: closing.heads } });
      if (!(chute.rate > 0 && chute.rate < Number.POSITIVE_INFINITY))
        report('SHIFT_SORTER_STILL', `${path}/rate`, {
          given: chute.rate,
          parts: { station: chute.station },
        });
      stops(path, chute.stops);
    }
  }
  if (takeOff !== undefined) {
    if (!(meanOf(takeOff.perBottle) < Number.POSITIVE_INFINITY))
      report('SHIFT_NO_WAY_OUT', '/takeOff/perBottle', { parts: { station: takeOff.station } });
    else drawn('/takeOff/perBottle', takeOff.perBottle);
    room('/takeOff/room', takeOff.room, takeOff.station);
    least('/takeOff/transit', takeOff.transit);
    stops('/takeOff', takeOff.stops);
  }
  line.lineStops.forEach((cause, i) => {
    stop(`/lineStops/${i}`, cause);
    const { tags } = layOut(line);
    cause.stations.forEach((station, k) => {
      if (!tags.includes(station))
        report('SHIFT_STATION_UNKNOWN', `/lineStops/${i}/stations/${k}`, {
          given: station,
          parts: { cause: cause.cause },
        });
    });
  });
  line.holds.forEach(({ rule, holds = 'washer', by = 'fill' }, i) => {
    if (line[holds] === undefined || line[by] === undefined)
      report('SHIFT_HOLD_WITHOUT_STATION', `/holds/${i}`, { parts: { rule } });
  });
  if (problems.length > 0) return problems;

  const head = washer ?? load ?? fill ?? closing ?? takeOff;
  const headTime =
    washer !== undefined
      ? washer.stroke + washer.dwell
      : load !== undefined
        ? meanOf(load.seconds)
        : fill !== undefined
          ? fill.travelIn +
            fill.lift +
            fill.lag +
            fill.drip +
            fill.lower +
            fill.clearOut +
            meanOf(fill.filling)
          : meanOf(closing?.perBottle ?? takeOff?.perBottle ?? 0);
  if (head === undefined || !(headTime > 0)) {
    return [{ code: 'SHIFT_NO_TIME', path: '', parts: { station: head?.station ?? '' } }];
  }
  const circle = circleOf(line);
  if (circle.length > 0) {
    report('SHIFT_DEADLOCK', '/holds', { parts: { loop: [...circle, circle[0]].join(' → ') } });
  } else if (washer !== undefined && fill !== undefined && washer.row !== fill.lanes) {
    const gaps = (load?.missing ?? 0) > 0 || (discharge?.fallen ?? 0) > 0;
    const needed = washer.row + fill.lanes - 1;
    if (gaps && line.wayRoom < needed)
      report('SHIFT_ROOM_FOR_SETS', '/wayRoom', { given: line.wayRoom, allowed: `>= ${needed}` });
  }
  return problems;
};
