import type { Lane } from '../hydraulics/system.ts';
import { withCommonError } from './common-error.ts';
import { type DoubtedLanes, doubtedLanes } from './doubted-lanes.ts';
import { drawnLanes } from './drawn-lanes.ts';
import { type Fit, fitLanes, type NoiseGround } from './fit.ts';
import { type Apart, keptTrials, type TrialProblem } from './kept-trials.ts';
import type { EstimateBasis, LaneEstimate } from './lane-estimate.ts';
import { type LanePriors, lanePriors } from './lane-priors.ts';
import { type LaneUnknown, laneScale, laneUnknowns, laneValues, offsetOf, perLane } from './lane-unknowns.ts';
import { linearFigure, quadratic } from './linear-figure.ts';
import { varianceOf } from './noise.ts';
import type { Reading, SetupReadings } from './readings.ts';
import { type Residual, residualsOf } from './residuals.ts';
import { type RowModel, rowAnswer } from './row-model.ts';
import { rowSetups, type SetupTrials } from './row-setups.ts';
import { type Doubt, doubtsOf } from './separable.ts';
import type { Estimated } from './student-sum.ts';
import { exchangedLanes } from './swapped.ts';
import type { FillTrial } from './trial.ts';
import type { UncertainFloor } from './uncertain-floor.ts';

export interface EstimateInput {
  /** Where the trials were made; its lanes as the book has them. */
  readonly floor: UncertainFloor;
  readonly trials: readonly FillTrial[];
  /** By lane; wide ranges where it is left out. */
  readonly priors?: readonly (LanePriors | undefined)[];
  /** What a bottle holds to its level, m3: what one that overflowed and was not weighed got at least. */
  readonly capacity?: number;
}

export interface LanesEstimate {
  readonly lanes: readonly LaneEstimate[];
  /** Scatter of single bottles about their mean, m3: with what the instrument adds, and the lanes' own. */
  readonly volumeSpread: Estimated;
  readonly ownSpread: Estimated;
  /** The same of times, s. */
  readonly timeSpread: Estimated;
  readonly residuals: readonly Residual[];
  /** What the trials can't tell, or what in them can't be right. */
  readonly doubts: readonly Doubt[];
  /** Trials that were not used, and why. */
  readonly apart: readonly Apart[];
  readonly problems: readonly TrialProblem[];
  /** What further answers start from. */
  readonly basis: EstimateBasis;
}

export type EstimateAnswer =
  | { readonly kind: 'estimate'; readonly estimate: LanesEstimate }
  | {
      readonly kind: 'refused';
      readonly problems: readonly TrialProblem[];
      readonly apart: readonly Apart[];
    };

/** Common practice: bottles of one lane lie within 0.1 to 0.3 % of each other. */
const typicalShare = 0.002;
/** A stopwatch in a hand, s. */
const typicalTime = 0.1;
/** A kitchen balance and a pressure gauge read in passing, where nothing was said of either. */
const volumeShare = 5e-4;
const pressureShare = 0.016;

const square = (x: number): number => x * x;

/** Part of a count between the first pulse of one bottle and of another: none where the meter is reset. */
const phaseVariance = (lanes: readonly Lane[]): number => {
  const free = lanes.filter(({ phase }) => phase > 0);
  return free.reduce((sum, { pulses }) => sum + 1 / (12 * pulses * pulses), 0) / Math.max(1, lanes.length);
};

const readingsOf = (
  trials: readonly FillTrial[],
  setup: SetupTrials,
  capacity: number | undefined,
): SetupReadings => {
  const volumes: Reading[][] = [];
  const bounds: Reading[][] = [];
  const times: Reading[][] = [];
  const pressures = new Map<string, Reading>();
  setup.trials.forEach((of, i) => {
    volumes.push([]);
    bounds.push([]);
    times.push([]);
    for (const trial of of) {
      const { volume, time, overflow, pressure, row, ...deviation } = trials[trial]!;
      const held = volume ?? (overflow === 'none' ? undefined : capacity);
      if (held !== undefined) {
        const stated = square(deviation.volumeDeviation ?? volumeShare * held);
        const common = volume === undefined ? undefined : deviation.commonDeviation;
        const reading = { trial, value: held, stated, ...(common === undefined ? {} : { common }) };
        (overflow === 'none' ? volumes : bounds)[i]!.push(reading);
      }
      if (time !== undefined) {
        times[i]!.push({ trial, value: time, stated: square(deviation.timeDeviation ?? 0) });
      }
      // one gauge on one manifold: bottles of a row that bear its reading bear the same one
      if (pressure !== undefined) {
        const stated = square(deviation.pressureDeviation ?? pressureShare * Math.abs(pressure));
        if (stated > 0) pressures.set(row ?? `\0${trial}`, { trial, value: pressure, stated });
      }
    }
  });
  const read = [...pressures.values()];
  // a gauge that is off is off in every row: many readings of it are one
  const gauge = read.map((each) => ({ ...each, stated: each.stated * read.length }));
  return { setup: setup.setup, volumes, bounds, times, pressures: gauge };
};

const meanStated = (readings: readonly Reading[]): number =>
  readings.reduce((sum, { stated }) => sum + stated, 0) / Math.max(1, readings.length);

/** So often ranges are made wider that the trials are against. */
const widenings = 3;
/** With fewer degrees of freedom a lane's own scatter says next to nothing. */
const leastOwn = 3;

/**
 * Scatter of one lane's bottles about what the lane's values give for them.
 *
 * Method   s^2 = sum miss^2/dof, dof = n - sum of what each reading pulls its own mean by
 */
const laneSpread = ({ fit, readings }: Pick<EstimateBasis, 'fit' | 'readings'>, lane: number) => {
  let squares = 0;
  let dof = 0;
  readings.forEach(({ setup, volumes }, s) => {
    const i = setup.lanes.indexOf(lane);
    const own = i < 0 ? [] : volumes[i]!;
    if (own.length === 0) return;
    const known = quadratic(fit.covariance.whole, fit.slopes[s]!.volumes[i]!);
    for (const { value, stated } of own) {
      squares += square(value - fit.answers[s]!.volumes[i]!);
      dof += Math.max(0, 1 - known / varianceOf(fit.volumeNoise, stated));
    }
  });
  return dof < leastOwn ? undefined : { value: Math.sqrt(squares / dof), deviation: 0, dof };
};

const laneEstimate = (
  { model, fit }: Pick<EstimateBasis, 'model' | 'fit'>,
  lane: number,
  trials: number,
  spread: Estimated | undefined,
): LaneEstimate => {
  const scale = model.scales[lane]!;
  const at = perLane * lane;
  const values = laneValues(scale, fit.unknowns, at);
  const slopeOf = (parts: Partial<Record<LaneUnknown, number>>): Float64Array => {
    const slope = new Float64Array(fit.unknowns.length);
    for (const name of laneUnknowns) slope[at + offsetOf[name]] = parts[name] ?? 0;
    return slope;
  };
  const { priors } = scale;
  const pulse = linearFigure(fit, values.pulse, slopeOf({ pulse: priors.pulse / scale.lane.pulses }));
  return {
    lane: scale.lane.tag,
    pulse,
    pulses: { ...pulse, value: 1 / pulse.value, deviation: pulse.deviation / square(pulse.value) },
    afterRun: linearFigure(fit, values.afterRun, slopeOf({ afterRun: priors.afterRun })),
    kv: linearFigure(fit, values.kv, slopeOf({ kv: priors.kv * values.kv })),
    drip: linearFigure(fit, values.drip, slopeOf({ drip: priors.drip })),
    shutTime: linearFigure(
      fit,
      values.afterRun + values.halfClosing,
      slopeOf({ afterRun: priors.afterRun, halfClosing: priors.halfClosing }),
    ),
    ...(spread === undefined ? {} : { spread }),
    trials,
  };
};

/**
 * What is known of lanes of which each may have been told in the place of another.
 *
 * Method   to the variances is added the mean square of what the values of one have less than those of each of the others,
 *          so that every interval reaches to them
 */
const anyPlace = ({ scales }: RowModel, fit: Fit, exchanged: readonly number[]): Fit => {
  const valuesOf = (lane: number) => laneValues(scales[lane]!, fit.unknowns, perLane * lane);
  const others = exchanged.slice(1).map((_, by) => {
    const apart = new Float64Array(fit.unknowns.length);
    exchanged.forEach((lane, i) => {
      const [one, other] = [valuesOf(lane), valuesOf(exchanged[(i + by + 1) % exchanged.length]!)];
      const { priors, lane: told } = scales[lane]!;
      const at = perLane * lane;
      apart[at + offsetOf.kv] = Math.log(other.kv / one.kv) / priors.kv;
      apart[at + offsetOf.pulse] = ((other.pulse - one.pulse) * told.pulses) / priors.pulse;
      apart[at + offsetOf.afterRun] = (other.afterRun - one.afterRun) / priors.afterRun;
      apart[at + offsetOf.drip] = (other.drip - one.drip) / priors.drip;
    });
    return apart;
  });
  const whole = fit.covariance.whole.map((row, i) =>
    row.map((one, j) => others.reduce((sum, apart) => sum + (apart[i]! * apart[j]!) / others.length, one)),
  );
  return { ...fit, covariance: { ...fit.covariance, whole } };
};

/**
 * What trials on one floor say of its lanes: pulse, after-run and valve coefficient of each, with all that ties them.
 *
 * Method   V = N/k - phase + q tau + drip and t = lag + t_count + delay + closing, with the flows of each row from the
 *          hydraulics of the floor and all lanes that ran; `fitLanes`
 *          Where the trials are against what was told of a lane, they are fitted again with wider ranges
 * Assumes  one throttling of a lane in all its throttled trials
 * Source   design, the other floor; `fit.ts`
 */
export const estimateLanes = (input: EstimateInput): EstimateAnswer => {
  const { floor, trials, capacity } = input;
  const { lanes } = floor.system;
  const scales = lanes.map((lane, i) => laneScale(lane, input.priors?.[i] ?? lanePriors(lane)));
  const { kept, ran, apart, problems } = keptTrials(floor.system, trials);
  const places = new Map(lanes.map(({ tag }, lane) => [tag, lane]));
  const laneAt = (trial: FillTrial): number => places.get(trial.lane) ?? -1;
  const throttles = [
    ...new Set(kept.filter((i) => trials[i]!.throttled === true).map((i) => laneAt(trials[i]!))),
  ].sort((a, b) => a - b);
  const told: RowModel = { floor, scales, throttles };
  const setups = rowSetups(trials, { ran, kept }, laneAt, lanes.length);
  const readings = setups.map((setup) => readingsOf(trials, setup, capacity));
  const size = kept.reduce((most, i) => Math.max(most, trials[i]!.volume ?? 0), 0);
  const ground: NoiseGround = {
    volumeLeast: phaseVariance(lanes),
    volumeTypical: square(typicalShare * (size > 0 ? size : (capacity ?? 0))) || Number.MIN_VALUE,
    timeTypical: square(typicalTime),
  };
  const refused = (code: TrialProblem['code']): EstimateAnswer => ({
    kind: 'refused',
    problems: [...problems, { code }],
    apart,
  });
  if (kept.length === 0) return refused('NO_TRIALS');
  let model = told;
  let again = fitLanes(model, readings, ground);
  let doubted: DoubtedLanes = { unlike: [], negative: [] };
  for (let round = 0; again !== undefined; round++) {
    const found = doubtedLanes(model, again, readings, ground.volumeLeast);
    // what was against the first ranges stays said though wider ones have room for it
    doubted = {
      unlike: [...new Set([...doubted.unlike, ...found.unlike])],
      negative: [...new Set([...doubted.negative, ...found.negative])],
    };
    if (found.priors === undefined || round === widenings) break;
    model = { ...told, scales: lanes.map((lane, i) => laneScale(lane, found.priors![i]!)) };
    again = fitLanes(model, readings, ground);
  }
  if (again === undefined) return refused('ROW_NEVER_ENDS');
  // how far bottles lie apart knows nothing of what is wrong with all of them
  const scatter = { fit: again, readings };
  const spreads = lanes.map((_, lane) => laneSpread(scatter, lane));
  again = withCommonError(again, readings);
  const used = lanes.map(() => 0);
  for (const i of kept) used[laneAt(trials[i]!)]!++;
  const alone = { model, fit: again, readings };
  const asTold = lanes.map((_, lane) => laneEstimate(alone, lane, used[lane]!, spreads[lane]));
  // by the ranges that the book has, not by those that its being wrong has widened
  const exchanged = exchangedLanes(told, asTold);
  const fit = exchanged.length === 0 ? again : anyPlace(model, again, exchanged);
  let drawn: ReturnType<EstimateBasis['draws']> | undefined;
  const draws: EstimateBasis['draws'] = () => {
    drawn ??= drawnLanes({ model, fit, readings });
    return drawn;
  };
  const basis: EstimateBasis = { model, fit, setups, readings, draws };
  const found = asTold.map((lane, i) =>
    exchanged.includes(i) ? laneEstimate(basis, i, used[i]!, spreads[i]) : lane,
  );
  // how well the bottles fit each other does not hang on whose they are
  const residuals = residualsOf({ ...alone, fit: scatter.fit });
  const missOf = (trial: number): { readonly miss?: number } => {
    const { volume, overflow } = trials[trial]!;
    if (volume === undefined || overflow !== 'none') return {};
    const [alone] = rowSetups(trials, { ran, kept: [trial] }, laneAt, lanes.length);
    const at = alone === undefined ? -1 : alone.trials.findIndex((of) => of.includes(trial));
    const answer = at < 0 ? undefined : rowAnswer(model, alone!.setup, fit.unknowns, 0);
    return answer === undefined ? {} : { miss: volume - answer.volumes[at]! };
  };
  const stated = meanStated(readings.flatMap((each) => each.volumes.flat()));
  const statedTime = meanStated(readings.flatMap((each) => each.times.flat()));
  const total = fit.volumeNoise.scale * (fit.volumeNoise.own + stated);
  return {
    kind: 'estimate',
    estimate: {
      lanes: found,
      volumeSpread: { value: Math.sqrt(total), deviation: 0, dof: fit.volumeNoise.dof },
      ownSpread: {
        value: Math.sqrt(Math.max(ground.volumeLeast, total - stated)),
        deviation: 0,
        dof: fit.volumeNoise.dof,
      },
      timeSpread: {
        value: Math.sqrt(fit.timeNoise.scale * (fit.timeNoise.own + statedTime)),
        deviation: 0,
        dof: fit.timeNoise.dof,
      },
      residuals,
      doubts: doubtsOf(basis, trials, found, residuals, doubted, exchanged),
      apart: apart.map((each) => (each.why === 'after-stop' ? { ...each, ...missOf(each.trial) } : each)),
      problems,
      basis,
    },
  };
};
