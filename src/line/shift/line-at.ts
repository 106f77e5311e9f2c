import { chuteAt } from './chute-at.ts';
import { periodAt } from './next-wait.ts';
import type { BottleGroup, LineMoment } from './shift-moment.ts';
import type { LostStep } from './shift-result.ts';
import type { ShiftTrace } from './trace-shift.ts';

const share = (at: number, from: number, to: number): number =>
  to > from ? Math.min(1, Math.max(0, (at - from) / (to - from))) : 1;

/** First number of `count` whose time is later than a moment; times rise. */
const firstLater = (times: Float64Array, count: number, at: number): number => {
  let [low, high] = [0, count];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (times[middle]! > at) high = middle;
    else low = middle + 1;
  }
  return low;
};

/** Steps of a set in their order: from when to when, where, what; without a step it stands. */
const stagesOf = ({ line, layout, sets }: ShiftTrace, j: number) => {
  const tag = (station: number): string => layout.tags[station]!;
  const stages: { until: number; station: string; step?: LostStep }[] = [];
  if (layout.fill >= 0) {
    const station = tag(layout.fill);
    stages.push(
      { until: sets.start[j]!, station },
      { until: sets.opened[j]!, station, step: 'travelIn' },
      { until: sets.filled[j]!, station, step: 'fill' },
      { until: sets.released[j]!, station, step: 'lower' },
      { until: sets.clearStart[j]!, station },
      { until: sets.cleared[j]!, station, step: 'clearOut' },
    );
  }
  if (layout.closing >= 0) {
    const station = tag(layout.closing);
    const transit = line.closing!.transit;
    const from = stages.at(-1)?.until;
    if (from !== undefined && transit > 0) stages.push({ until: from + transit, station, step: 'convey' });
    stages.push(
      { until: sets.capStart[j]!, station },
      { until: sets.capped[j]!, station, step: 'cap' },
      { until: sets.left[j]!, station },
    );
  }
  if (layout.takeOff >= 0) {
    const station = tag(layout.takeOff);
    const transit = line.takeOff!.transit;
    const from = stages.at(-1)?.until;
    if (from !== undefined && transit > 0) stages.push({ until: from + transit, station, step: 'convey' });
    stages.push({ until: sets.takeStart[j]!, station }, { until: sets.taken[j]!, station, step: 'takeOff' });
  }
  return stages;
};

/** Where every bottle stands at a moment of a shift, and what each station does. */
export const lineAt = (trace: ShiftTrace, at: number): LineMoment => {
  const { line, layout, rows, sets, loadedRows, strokes, setCount } = trace;
  const tag = (...stations: readonly number[]): string =>
    layout.tags[stations.find((station) => station >= 0) ?? layout.core]!;
  const groups: BottleGroup[] = [];
  const inWasher = line.washer?.rows ?? 0;
  const struck = firstLater(rows.stroke, strokes, at);
  const next = tag(layout.fill, layout.closing, layout.takeOff);

  let put = 0;
  let lost = 0;
  let cameOut = 0;
  const started = layout.fill >= 0 ? sets.start : layout.closing >= 0 ? sets.capStart : sets.takeStart;
  const hasNext = layout.fill >= 0 || layout.closing >= 0 || layout.takeOff >= 0;
  let taken = 0;
  const begun = hasNext ? firstLater(started, setCount, at) : 0;
  for (let j = 0; j < begun; j++) taken += sets.bottles[j]!;

  for (let row = line.start === 'washer full' ? -inWasher : 0; row < loadedRows; row++) {
    const bottles = row < 0 ? layout.row : rows.put[row]!;
    if (row >= 0 && (layout.load >= 0 ? rows.loaded[row]! : rows.stroke[row]!) > at) break;
    if (row >= 0) put += bottles;
    const group = { kind: 'row', number: row, bottles } as const;
    const out = row + inWasher;
    if (row >= 0 && row >= struck) {
      if (bottles > 0)
        groups.push({ ...group, station: tag(layout.washer, layout.fill, layout.closing), progress: 0 });
      continue;
    }
    if (out >= struck) {
      const last = struck - 1;
      const moves = last >= 0 && at < rows.stroked[last]!;
      const [from, to] = last < 0 ? [0, 0] : [rows.stroke[last]!, rows.stroked[last]!];
      if (bottles > 0) {
        groups.push({
          ...group,
          station: tag(layout.washer),
          step: moves ? 'stroke' : 'dwell',
          progress: moves ? share(at, from, to) : share(at, to, last < 0 ? 0 : rows.ready[last]!),
          place: last - row,
        });
      }
      continue;
    }
    const fallen = at >= rows.discharged[out]! ? rows.fallen[out]! : 0;
    lost += fallen;
    if (at < rows.arrived[out]!) {
      const standing = bottles - fallen;
      const [station, step, from, to] =
        at < rows.stroked[out]!
          ? ([tag(layout.washer), 'stroke', rows.stroke[out]!, rows.stroked[out]!] as const)
          : at < rows.discharged[out]!
            ? ([tag(layout.discharge), 'setUp', rows.stroked[out]!, rows.discharged[out]!] as const)
            : ([tag(...layout.conveyors), 'convey', rows.discharged[out]!, rows.arrived[out]!] as const);
      if (standing > 0)
        groups.push({ ...group, bottles: standing, station, step, progress: share(at, from, to) });
      continue;
    }
    // sets take bottles in the order in which they came
    cameOut += rows.out[out]!;
    const waiting = hasNext ? Math.min(rows.out[out]!, cameOut - taken) : 0;
    if (waiting > 0) groups.push({ ...group, bottles: waiting, station: next, progress: 0 });
  }

  let good = hasNext ? 0 : cameOut;
  for (let j = 0; j < begun; j++) {
    const stages = stagesOf(trace, j);
    const rejected = layout.closing >= 0 && at >= sets.left[j]! ? sets.rejected[j]! : 0;
    lost += rejected;
    const bottles = sets.bottles[j]! - rejected;
    const now = stages.findIndex(({ until }) => at < until);
    if (now < 0) good += bottles;
    else if (bottles > 0) {
      const { until, station, step } = stages[now]!;
      const progress = step === undefined ? 0 : share(at, stages[now - 1]?.until ?? 0, until);
      groups.push({
        kind: 'set',
        number: j,
        bottles,
        station,
        ...(step === undefined ? {} : { step }),
        progress,
      });
    }
  }
  return {
    at,
    groups,
    stations: trace.periods.map(({ of }) => of[periodAt(of, at)]!),
    ...(trace.chute === undefined ? {} : { chute: chuteAt(trace.chute, at) }),
    put,
    good,
    lost,
  };
};
