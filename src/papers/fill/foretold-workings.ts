import type { LanePrediction } from '../../fill/predict-other-floor.ts';
import type { Working } from '../../floor/assessment.ts';
import { combinedUncertaintySheet } from '../../sheets/contents/combined-uncertainty.ts';
import { timeIntervalSheet } from '../../sheets/contents/time-interval.ts';
import { runSheet, type Sheet, type Values } from '../../sheets/frame.ts';
import type { Citations, Marks } from '../workings/citations.ts';

/** What the sheet takes for as good as known. */
const known = 1e9;

const partsOf = (parts: LanePrediction['volumeParts']) => ({
  contributions: parts.map(({ variance }) => Math.sqrt(variance)),
  dofs: parts.map(({ dof }) => Math.min(known, Math.max(1, dof))),
});

const workingOf = <I extends object, O extends object>(
  sheet: Sheet<I, O>,
  inputs: I & object,
): Working | undefined => {
  const run = runSheet(sheet, inputs as Values);
  if (!run.ok) return undefined;
  const { outputs, notes } = run.value;
  return {
    sheet: sheet.id,
    version: sheet.version,
    inputs: inputs as Values,
    outputs: { ...outputs } as Values,
    notes,
    from: {},
  };
};

/** Mark of the working of a lane's interval of contents. */
export const contentsMark = (
  { volume, volumeParts }: LanePrediction,
  floor: string,
  citations: Citations,
): Marks =>
  citations.mark(
    floor,
    workingOf(combinedUncertaintySheet, { ...partsOf(volumeParts), confidence: volume.confidence }),
  );

/** Mark of the working of a lane's interval of time. */
export const timeMark = ({ time, timeParts }: LanePrediction, floor: string, citations: Citations): Marks =>
  citations.mark(
    floor,
    workingOf(timeIntervalSheet, {
      time: time.value,
      ...partsOf(timeParts),
      confidence: time.confidence,
    }),
  );
