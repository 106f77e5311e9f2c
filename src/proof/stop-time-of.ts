import type { Working } from '../floor/assessment.ts';
import { runSheet } from '../sheets/frame.ts';
import { stopTimeUsedSheet } from '../sheets/safety/stop-time-used.ts';
import type { TypedReading } from './typed-reading.ts';

/** The stop time that distances are worked out with, out of stops that were read; undefined for fewer than two. */
export const stopTimeOf = (
  readings: readonly TypedReading[],
): { readonly reading: TypedReading; readonly working: Working } | undefined => {
  const inputs = { readings: readings.map(({ value }) => value), wear: 0 };
  const run = runSheet(stopTimeUsedSheet, inputs);
  if (!run.ok) return undefined;
  const { outputs, notes } = run.value;
  const { id: sheet, version } = stopTimeUsedSheet;
  // the scatter of the stops is in it already
  const reading = { value: outputs.time, low: outputs.time, high: outputs.time };
  return { reading, working: { sheet, version, inputs, outputs: { ...outputs }, notes, from: {} } };
};
