import type { Working } from '../floor/assessment.ts';
import type { Kind } from '../quantity/kinds.ts';
import { runSheet } from '../sheets/frame.ts';
import { intervalOfRunsSheet } from '../sheets/rate/interval-of-runs.ts';
import { meanTimeIntervalSheet } from '../sheets/rate/mean-time-interval.ts';
import type { TypedReading } from './typed-reading.ts';

/** Two-sided. */
const confidence = 0.95;

const meanOf = (readings: readonly TypedReading[], end: keyof TypedReading): number =>
  readings.reduce((sum, reading) => sum + reading[end], 0) / readings.length;

/**
 * The mean of readings with what it may be: Student's interval, and on both sides the mean spread of the readings.
 *
 * Returns  undefined without a reading; one alone stands for itself, without a sheet
 */
export const meanReading = (
  readings: readonly TypedReading[],
  kind: Kind,
): { readonly reading: TypedReading; readonly working?: Working } | undefined => {
  const [only] = readings;
  if (only === undefined) return undefined;
  if (readings.length === 1) return { reading: only };
  const values = readings.map(({ value }) => value);
  const timed = kind === 'time';
  const inputs = timed ? { times: values, confidence } : { values, confidence };
  const { id: sheet, version } = timed ? meanTimeIntervalSheet : intervalOfRunsSheet;
  const run = timed ? runSheet(meanTimeIntervalSheet, inputs) : runSheet(intervalOfRunsSheet, inputs);
  if (!run.ok) return undefined;
  const { outputs, notes } = run.value;
  const { mean, low, high } = outputs;
  const reading = {
    value: mean,
    low: low - (meanOf(readings, 'value') - meanOf(readings, 'low')),
    high: high + (meanOf(readings, 'high') - meanOf(readings, 'value')),
  };
  return { reading, working: { sheet, version, inputs, outputs: { ...outputs }, notes, from: {} } };
};
