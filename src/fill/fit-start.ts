import { offsetOf, perLane } from './lane-unknowns.ts';
import type { SetupReadings } from './readings.ts';
import { type RowModel, rowAnswer, sizeOf } from './row-model.ts';

/** No lane is moved further than this at once, in prior deviations. */
const longStep = 1.5;
/** Rounds in which the lanes are brought to the order in which they were seen to end. */
const startRounds = 3;

/**
 * Where the fit starts: each lane's Kv moved by the ratio of the time that it takes to the time that was read. From lanes
 * that are all alike, as a book has them, the slopes of the order of closing say nothing.
 */
export const fitStart = (model: RowModel, readings: readonly SetupReadings[]): Float64Array => {
  const unknowns = new Float64Array(sizeOf(model));
  for (let round = 0; round < startRounds; round++) {
    const ratios = model.scales.map(() => ({ sum: 0, count: 0 }));
    for (const { setup, times } of readings) {
      const answer = rowAnswer(model, setup, unknowns, 0);
      if (answer === undefined) return new Float64Array(sizeOf(model));
      setup.lanes.forEach((lane, i) => {
        const read = times[i]!;
        if (read.length === 0 || setup.throttled[i]) return;
        const mean = read.reduce((sum, { value }) => sum + value, 0) / read.length;
        const ratio = ratios[lane]!;
        ratio.sum += read.length * Math.log(answer.times[i]! / mean);
        ratio.count += read.length;
      });
    }
    model.scales.forEach(({ priors }, lane) => {
      const { sum, count } = ratios[lane]!;
      const at = perLane * lane + offsetOf.kv;
      const by = count > 0 ? sum / count / priors.kv : 0;
      unknowns[at] = unknowns[at]! + Math.max(-longStep, Math.min(longStep, by));
    });
  }
  return unknowns;
};
