import { type PredictionInput, predictOtherFloor } from '../../fill/predict-other-floor.ts';
import { placed } from '../../fill/row-forecast.ts';
import { systemOfTrials } from '../../fill/system-of-trials.ts';
import type { BookReader } from '../book-reader.ts';
import { estimateOf } from '../fill/estimate-of.ts';
import { type FillFloor, fillFloor } from '../fill/fill-floor.ts';
import { floorAllowances } from '../fill/floor-change.ts';
import { measuredBetween } from '../fill/measured-between.ts';
import { trialsInSi } from '../fill/trials-in-si.ts';
import type { FloorInputs } from '../read-floor.ts';
import { type FillSolution, solveFill } from '../solve-floor.ts';
import type { ShiftRecords } from './shift-records.ts';

/** A time with the interval that holds it, s. */
export interface TrialTime {
  readonly seconds: number;
  readonly low: number;
  readonly high: number;
}

/** What trials say of the fill of a floor. */
export interface FillFromTrials {
  /** Floor on which they were made: this one, or one from which it is foretold. */
  readonly from: string;
  readonly trials: number;
  /** Slowest lane of a set, from the opening of the lanes; and what the book alone says of it. */
  readonly set: TrialTime;
  readonly byBook?: number;
  readonly lanes: readonly (TrialTime & {
    readonly lane: string;
    /** Standard deviation from set to set, s. */
    readonly spread: number;
  })[];
}

/** The fill as trials found it, in the place of what the book alone gives. */
export interface TrialFill {
  readonly told: FillFromTrials;
  readonly fill: FillSolution;
  /** Standard deviation of what a lane gives from set to set, m3, by lane. */
  readonly deviations: readonly number[];
}

type Estimate = PredictionInput['estimate'];

/** A lane's own scatter without what the instrument added, and no less than where its meter may stand at the start. */
const deviationsOf = (
  { lanes, ownSpread, volumeSpread }: Estimate,
  fill: FillSolution,
): readonly number[] => {
  const instrument = volumeSpread.value ** 2 - ownSpread.value ** 2;
  return lanes.map(({ spread }, i) => {
    const own = spread === undefined ? ownSpread.value ** 2 : spread.value ** 2 - instrument;
    const least = (fill.system.lanes[i]?.phase ?? 0) ** 2 / 3;
    return Math.sqrt(Math.max(least, own));
  });
};

/** What scatters in volume scatters in time by what flows at the count. */
const inTime = (deviation: number, flow: number): number => (flow > 0 ? deviation / flow : 0);

/** Floors of which trials may tell: this one first, then the one that the line was built on. */
const toldBy = (reader: BookReader, floor: number): readonly number[] => {
  const built = (reader.book.floors ?? []).findIndex(({ role }) => role === 'built on');
  return built < 0 || built === floor ? [floor] : [floor, built];
};

/**
 * The fill of a floor as trials found it.
 *
 * Method   of trials on the floor itself the lanes as they were found; where there are none, those of the floor that the
 *          line was built on, foretold with what is allowed for between the two. The fill of the line is theirs, and what
 *          their interval leaves open is told beside it
 * Returns  undefined where no trial says anything of this floor
 * Cost     an estimate and a forecast: some tens of milliseconds
 * Source   `estimateLanes`, `predictOtherFloor`
 */
export const trialFill = (
  reader: BookReader,
  inputs: FloorInputs,
  { trials = [], allowances: measured = [] }: ShiftRecords,
  { byBook, confidence }: { readonly byBook: FillSolution | undefined; readonly confidence: number },
): TrialFill | undefined => {
  const format = inputs.format?.tag;
  const ofFormat = trials.filter((trial) => trial.format === undefined || trial.format === format);
  if (ofFormat.length === 0) return undefined;
  const here = fillFloor(reader, inputs.floorNumber, format);
  const { uncertain } = here;
  if (uncertain === undefined) return undefined;
  const estimateOn = (from: FillFloor) => {
    const answer = estimateOf(reader, from, trialsInSi(reader, from, ofFormat));
    return answer?.kind === 'estimate' ? answer.estimate : undefined;
  };
  for (const number of toldBy(reader, inputs.floorNumber)) {
    const from = number === inputs.floorNumber ? here : fillFloor(reader, number, format);
    const estimate = estimateOn(from);
    if (estimate === undefined) continue;
    const between =
      from === here
        ? undefined
        : floorAllowances(reader, from, here, { measured: measuredBetween(measured, from.tag, here.tag) });
    const place = { floor: uncertain, allowances: between?.allowances ?? [] };
    const found = solveFill({ ...inputs.model, system: systemOfTrials(placed(estimate.basis, place)) });
    if (found === undefined || 'stuck' in found) continue;
    const presets = found.system.lanes.map(({ preset }) => preset);
    const foretold = predictOtherFloor({ estimate, ...place, presets, confidence });
    if (foretold === undefined) continue;
    const { rowTime } = foretold;
    // lanes that may change places in the order of closing make the slowest a little slower than the likeliest row
    const lag = found.lag + rowTime.value - (found.row.fillTime + found.lag);
    const fill = { ...found, lag };
    const deviations = deviationsOf(estimate, fill);
    return {
      fill,
      deviations,
      told: {
        from: from.tag,
        trials: estimate.lanes.reduce((sum, lane) => sum + lane.trials, 0),
        set: { seconds: rowTime.value, low: rowTime.lower, high: rowTime.upper },
        ...(byBook === undefined ? {} : { byBook: byBook.row.fillTime + byBook.lag }),
        lanes: foretold.lanes.map(({ lane, time }, i) => ({
          lane,
          seconds: time.value,
          low: time.lower,
          high: time.upper,
          spread: inTime(deviations[i]!, fill.row.lanes[i]!.flowAtEnd),
        })),
      },
    };
  }
  return undefined;
};
