/**
 * The narrowest interval that trials with this noise can give, by Cramer and Rao: written apart from the estimator, with
 * differences of whole rows at the truth and elimination in place of its own.
 */
import type { FillSystem, Lane } from '../../hydraulics/system.ts';
import { lanePriors } from '../lane-priors.ts';
import { type FloorPair, trueRow } from './floor-pair.ts';

const unknownsPerLane = 5;

/** The floor with its unknowns moved from the truth, in SI: ln Kv, ln pulse, after-run, half closing, drip. */
const movedBy = (system: FillSystem, move: readonly number[]): FillSystem => ({
  ...system,
  lanes: system.lanes.map((lane, i): Lane => {
    const [kv = 0, pulse = 0, afterRun = 0, half = 0, drip = 0] = move.slice(
      unknownsPerLane * i,
      unknownsPerLane * (i + 1),
    );
    const factor = Math.exp(kv);
    return {
      ...lane,
      kv: lane.kv * factor,
      kvSlow: lane.kvSlow * factor,
      pulses: lane.pulses / Math.exp(pulse),
      phase: lane.phase * Math.exp(pulse),
      delay: lane.delay + afterRun - half,
      closing: lane.closing + 2 * half,
      afterDrip: lane.afterDrip + drip,
    };
  }),
});

/** Inverse by elimination with pivots. */
const inverse = (a: readonly (readonly number[])[]): number[][] => {
  const n = a.length;
  const rows = a.map((row, i) => [...row, ...row.map((_, j) => (i === j ? 1 : 0))]);
  for (let column = 0; column < n; column++) {
    let pivot = column;
    for (let i = column + 1; i < n; i++) {
      if (Math.abs(rows[i]![column]!) > Math.abs(rows[pivot]![column]!)) pivot = i;
    }
    [rows[column], rows[pivot]] = [rows[pivot]!, rows[column]!];
    const by = rows[column]![column]!;
    rows[column] = rows[column]!.map((x) => x / by);
    for (let i = 0; i < n; i++) {
      if (i === column) continue;
      const factor = rows[i]![column]!;
      rows[i] = rows[i]!.map((x, j) => x - factor * rows[column]![j]!);
    }
  }
  return rows.map((row) => row.slice(n));
};

const steps = [1e-5, 1e-5, 1e-5, 1e-5, 1e-10];

export interface LeastWidths {
  /** Standard deviations of the mean there, by lane. */
  readonly volumes: readonly number[];
  readonly times: readonly number[];
}

export const leastWidths = (pair: FloorPair): LeastWidths => {
  const { trueHere, trueThere, here, there, trials, presets } = pair;
  const lanes = trueHere.lanes.length;
  const size = unknownsPerLane * lanes + 1;
  const stepOf = (i: number): number => (i === size - 1 ? 1e-3 : steps[i % unknownsPerLane]!);
  const slopes = (system: FillSystem, floor: typeof here, counts: readonly number[]) => {
    const at = (i: number, by: number) => {
      const move = Array.from({ length: size }, (_, j) => (j === i ? by : 0));
      const moved = i === size - 1 ? floor.unknowns[0]!.moved(system, by) : system;
      return trueRow({ ...movedBy(moved, move) }, counts);
    };
    return Array.from({ length: size }, (_, i) => {
      const [up, down] = [at(i, stepOf(i)), at(i, -stepOf(i))];
      const slope = (a: readonly number[], b: readonly number[]) =>
        a.map((x, lane) => (x - b[lane]!) / (2 * stepOf(i)));
      return { volumes: slope(up.volumes, down.volumes), times: slope(up.times, down.times) };
    });
  };
  const information = Array.from({ length: size }, () => new Array<number>(size).fill(0));
  here.system.lanes.forEach((lane, l) => {
    const { kv, pulse, afterRun, halfClosing, drip } = lanePriors(lane);
    [kv, pulse, afterRun, halfClosing, drip].forEach((deviation, i) => {
      const at = unknownsPerLane * l + i;
      information[at]![at] = deviation ** -2;
    });
  });
  information[size - 1]![size - 1] = 1;
  const volumeWeight = 1 / (pair.ownSpread ** 2 + pair.weighing ** 2);
  const timeWeight = pair.watch ** -2;
  for (const preset of new Set(trials.map((trial) => trial.preset))) {
    const bottles = trials.filter((trial) => trial.preset === preset).length / lanes;
    const of = slopes(
      trueHere,
      here,
      presets.map(() => preset),
    );
    for (let lane = 0; lane < lanes; lane++) {
      for (let i = 0; i < size; i++) {
        for (let j = 0; j < size; j++) {
          information[i]![j] =
            information[i]![j]! +
            bottles *
              (volumeWeight * of[i]!.volumes[lane]! * of[j]!.volumes[lane]! +
                timeWeight * of[i]!.times[lane]! * of[j]!.times[lane]!);
        }
      }
    }
  }
  const covariance = inverse(information);
  const of = slopes(trueThere, there, presets);
  const deviation = (which: 'volumes' | 'times', lane: number): number => {
    // what is not known of the supply there is its own, and as large as it is
    let variance = of[size - 1]![which][lane]! ** 2;
    for (let i = 0; i < size - 1; i++) {
      for (let j = 0; j < size - 1; j++) {
        variance += of[i]![which][lane]! * covariance[i]![j]! * of[j]![which][lane]!;
      }
    }
    return Math.sqrt(variance);
  };
  return {
    volumes: presets.map((_, lane) => deviation('volumes', lane)),
    times: presets.map((_, lane) => deviation('times', lane)),
  };
};
