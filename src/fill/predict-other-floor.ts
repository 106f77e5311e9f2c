import type { LineTimes } from '../line/line-times.ts';
import { solveLine } from '../line/solve-line.ts';
import type { Allowance } from './allowances.ts';
import type { LanesEstimate } from './estimate-lanes.ts';
import { offsetOf, perLane } from './lane-unknowns.ts';
import { figureParts } from './linear-figure.ts';
import {
  type ForecastCauses,
  type ForecastFigure,
  type OfRuns,
  placed,
  type RowForecast,
  rowForecast,
} from './row-forecast.ts';
import { singleBottle } from './single-bottle.ts';
import {
  atLeastNothing,
  type Estimated,
  estimatedOf,
  positiveWithinOf,
  type VariancePart,
  type Within,
  withinOf,
} from './student-sum.ts';
import type { UncertainFloor } from './uncertain-floor.ts';

export interface PredictionInput {
  readonly estimate: LanesEstimate;
  /** The other floor; its lanes in the order of the trials', with their heights there. */
  readonly floor: UncertainFloor;
  /** Counts by lane. */
  readonly presets: readonly number[];
  /** With these counts and allowances, where it is known already. */
  readonly forecast?: RowForecast | undefined;
  /** What two floors change; without any the answer speaks of the same liquid and the same air alone. */
  readonly allowances?: readonly Allowance[];
  /** 0.9 where it is left out. */
  readonly confidence?: number;
  /** The line there, of which the fill is put in. */
  readonly times?: LineTimes;
}

export interface LanePrediction {
  readonly lane: string;
  readonly preset: number;
  /** Mean over many bottles, m3. */
  readonly volume: Within;
  /** One bottle, m3: the lane's own spread counted in. */
  readonly bottle: Within;
  /** Mean time from the opening of the lanes to this one fully shut, s. */
  readonly time: Within;
  /** Mean volume that passes after the count, with the drip, m3. */
  readonly afterRun: Within;
  /** What makes the volume and the time uncertain. */
  readonly volumeCauses: ForecastCauses;
  readonly timeCauses: ForecastCauses;
  /** The same as variances, in the order of the causes, with the degrees of freedom behind each. */
  readonly volumeParts: readonly VariancePart[];
  readonly timeParts: readonly VariancePart[];
}

export interface FloorPrediction {
  readonly lanes: readonly LanePrediction[];
  /** Slowest lane, s. */
  readonly rowTime: Within;
  /** Bottles in to bottles out, s; where the line there is known. */
  readonly stationTime?: Within;
  /** Bottles a second with a full tank. */
  readonly rate?: Within;
  readonly confidence: number;
  readonly allowances: readonly Allowance[];
  /** Share of what may be true in which some lane never reaches its count. */
  readonly stuckShare: number;
  /** By how much an interval of a volume would be narrower at most, as a share, if it were known how stiff each run is. */
  readonly ofRuns: OfRuns;
  /** Real moves on which such intervals were scored. */
  readonly realMoves: number;
}

/** The line with the row's time in it: slower at the upper end. */
const lineOf = (
  times: LineTimes & { readonly fill: NonNullable<LineTimes['fill']> },
  row: Within,
  lag: number,
): { readonly stationTime: Within; readonly rate?: Within } => {
  const { travelIn, lift, drip, lower, clearOut } = times.fill;
  const around = travelIn + lift + drip + lower + clearOut;
  const rateAt = (time: number): number | undefined => {
    const solved = solveLine({ ...times, fill: { ...times.fill, lag, filling: Math.max(0, time - lag) } });
    return solved === undefined || 'deadlock' in solved ? undefined : solved.rate;
  };
  const [slow, middle, fast] = [row.upper, row.value, row.lower].map(rateAt);
  const station = {
    ...row,
    value: around + row.value,
    lower: around + row.lower,
    upper: around + row.upper,
  };
  if (slow === undefined || middle === undefined || fast === undefined) return { stationTime: station };
  const deviation = ((fast - slow) / (row.upper - row.lower)) * row.deviation || 0;
  return {
    stationTime: station,
    rate: { ...row, value: middle, lower: slow, upper: fast, deviation },
  };
};

const usualConfidence = 0.9;
/** No move of a real line has been scored yet. */
const realMoves = 0;

/**
 * What the lanes will do on the other floor, as intervals.
 *
 * Method   `rowForecast`; the station and the rate at both ends of the row's time
 * Returns  undefined where some lane can never reach its count there
 */
export const predictOtherFloor = (input: PredictionInput): FloorPrediction | undefined => {
  const { estimate, floor, presets, allowances = [], confidence = usualConfidence, times } = input;
  const { basis } = estimate;
  const place = { floor, allowances };
  const { forecast = rowForecast(basis, place, presets) } = input;
  if (forecast === undefined) return undefined;
  const { model } = placed(basis, place);
  /** What passes after the count is the volume without what was counted. */
  const afterRunOf = (volume: ForecastFigure, i: number, preset: number): Estimated => {
    const { priors, lane, phaseCounts } = model.scales[i]!;
    const at = perLane * i + offsetOf.pulse;
    const counted = Math.max(0, preset - phaseCounts) / lane.pulses;
    const slope = Float64Array.from(volume.slope);
    slope[at] = slope[at]! - counted * priors.pulse;
    const value = volume.value - counted * (1 + priors.pulse * basis.fit.unknowns[at]!);
    const [, , , supply, , order] = volume.parts;
    const moved = allowances.filter(({ moves }) => moves !== 'pulse');
    return estimatedOf(value, [
      ...figureParts(basis.fit, slope),
      supply!,
      order!,
      ...moved.map(({ deviation }) => ({ variance: (value * deviation) ** 2, dof: Infinity })),
    ]);
  };
  const meanOf = ({ value, parts }: ForecastFigure): Within =>
    atLeastNothing(withinOf(estimatedOf(value, parts), confidence));
  const timeOf = ({ value, parts }: ForecastFigure): Within =>
    positiveWithinOf(estimatedOf(value, parts), confidence);
  const lanes = presets.map((preset, i): LanePrediction => {
    const volume = forecast.volumes[i]!;
    return {
      lane: model.scales[i]!.lane.tag,
      preset,
      volume: meanOf(volume),
      bottle: atLeastNothing(withinOf(singleBottle(volume, estimate, 0.5 + 0.5 * confidence), confidence)),
      time: timeOf(forecast.times[i]!),
      afterRun: withinOf(afterRunOf(volume, i, preset), confidence),
      volumeCauses: volume.causes,
      timeCauses: forecast.times[i]!.causes,
      volumeParts: volume.parts,
      timeParts: forecast.times[i]!.parts,
    };
  });
  const rowTime = timeOf(forecast.rowTime);
  const narrower = (of: keyof OfRuns): number =>
    Math.max(...forecast.volumes.map(({ ofRuns }) => 1 - Math.sqrt(Math.max(0, 1 - ofRuns[of]))));
  return {
    lanes,
    rowTime,
    ...(times?.fill === undefined
      ? {}
      : lineOf({ ...times, fill: times.fill }, rowTime, forecast.answer.lag)),
    confidence,
    allowances,
    stuckShare: forecast.stuckShare,
    ofRuns: { here: narrower('here'), there: narrower('there') },
    realMoves,
  };
};
