import type { LanePrediction } from '../../fill/index.ts';
import { sheetAddress } from '../shell/route.ts';

/** What a lane is foretold to do on one floor, with what it is made of. */
export type ForetoldLane = Pick<LanePrediction, 'volume' | 'time' | 'volumeParts' | 'timeParts'>;

/** Enough that the sheet gives the interval's own ends. */
const digits = 9;
/** What the sheet takes for as good as known. */
const known = 1e9;

const listOf = (values: readonly number[], unit: string): string =>
  values.map((value) => `${value.toPrecision(digits)}${unit}`).join('; ');

const partsIn = (parts: LanePrediction['volumeParts'], scale: number, unit: string) => ({
  contributions: listOf(
    parts.map(({ variance }) => scale * Math.sqrt(variance)),
    unit,
  ),
  dofs: listOf(
    parts.map(({ dof }) => Math.min(known, Math.max(1, dof))),
    '',
  ),
});

/** The sheet of the interval of a lane's mean contents, with what makes it wide. */
export const volumeIntervalSheet = ({ volume, volumeParts }: ForetoldLane): string =>
  sheetAddress('contents/combined-uncertainty', {
    ...partsIn(volumeParts, 1e6, ' mL'),
    confidence: `${100 * volume.confidence} %`,
  });

/** The sheet of the interval of a lane's fill time. */
export const timeIntervalSheet = ({ time, timeParts }: ForetoldLane): string =>
  sheetAddress('contents/time-interval', {
    time: `${time.value.toPrecision(digits)} s`,
    ...partsIn(timeParts, 1, ' s'),
    confidence: `${100 * time.confidence} %`,
  });
