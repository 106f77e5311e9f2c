import type { Book } from '../../book/index.ts';
import { adviseTrial, type TrialAdvice } from '../../fill/advise-trial.ts';
import type { EstimateAnswer } from '../../fill/estimate-lanes.ts';
import { type FloorPrediction, predictOtherFloor } from '../../fill/predict-other-floor.ts';
import { rowForecast } from '../../fill/row-forecast.ts';
import { type PredictionScore, scorePrediction } from '../../fill/score.ts';
import type { ContentsRule } from '../../sheets/contents/reference-temperature.ts';
import { bookReader } from '../book-reader.ts';
import { ratePathOf } from '../rate-path.ts';
import { formatOf } from '../read-floor.ts';
import { type AgreedContents, agreedContents } from './agreed-contents.ts';
import { capacityOf } from './capacity-of.ts';
import { estimateOf } from './estimate-of.ts';
import { type FillFloor, fillFloor } from './fill-floor.ts';
import { type AllowanceAsk, type FloorAllowances, floorAllowances } from './floor-change.ts';
import { type FillGoal, type GoalPresets, goalPresets } from './goal-presets.ts';
import { type MeasuredAllowance, measuredBetween } from './measured-between.ts';
import { reachedShare } from './reached-share.ts';
import { type TrialSlips, trialSlips } from './trial-slips.ts';
import { type TrialsInSi, trialsInSi } from './trials-in-si.ts';
import type { MeasuredSample, WeighedTrial } from './weighed.ts';

/** What is asked of the trials. */
export interface FillAsk extends AllowanceAsk {
  /** Of any floor; those of another format are left out. */
  readonly trials: readonly WeighedTrial[];
  /** Tag; the first of the book where it is left out. */
  readonly format?: string;
  /** Floor whose trials are looked at; the one that the line is built on where it is left out. */
  readonly from?: string;
  /** Floor of which is foretold; the one that it is bound for where it is left out. */
  readonly to?: string;
  /** Of the intervals; 0.9 where it is left out. */
  readonly confidence?: number;
  /** One count for all lanes there, in the place of what the book or the trials have. */
  readonly preset?: number;
  /** Bottles of the customer that were measured. */
  readonly samples?: readonly MeasuredSample[];
  /** What was measured in the place of an allowance, between any two floors; `measured` goes before them. */
  readonly allowances?: readonly MeasuredAllowance[];
  /** What the counts are for; where it is left out the volume under a rule of contents, else the level. */
  readonly goal?: FillGoal;
  /** Confidence of a tolerance bound; without it one bottle drawn by chance is spoken of. */
  readonly tolerance?: number;
  /** In the place of the rule that was agreed. */
  readonly rule?: ContentsRule;
  /** Maximum allowable variation, m3, for the handbook that has its own. */
  readonly variation?: number;
  /** m3, in the place of what the book says that the label states. */
  readonly label?: number;
}

/** Why there is no answer, as far as the book or the trials have it. */
export type NoAnswer =
  /** The trials' floor does not say enough of its supply or its lanes; `places` would. */
  | { readonly code: 'floorUnknown'; readonly floor: string; readonly places: readonly string[] }
  | { readonly code: 'noOtherFloor' }
  | { readonly code: 'noTrials'; readonly floor: string }
  /** Lanes of which neither book nor trials nor call say a count there. */
  | { readonly code: 'noPreset'; readonly lanes: readonly string[] }
  /** Some lane never reaches its count there. */
  | { readonly code: 'neverEnds'; readonly floor: string };

/** Where the counts come from that are foretold. */
export type PresetFrom = 'call' | 'book' | 'trials';

export interface OtherFloor {
  readonly floor: FillFloor;
  readonly presets: readonly number[];
  readonly presetsFrom: readonly PresetFrom[];
  readonly change: FloorAllowances;
  readonly prediction: FloorPrediction;
  /** Share of bottles by lane that reach their level with these counts; absent where the level is not known. */
  readonly reached?: readonly number[];
  /** Counts to begin with there. */
  readonly start: GoalPresets;
  /** The prediction against trials that were made there, where there are any. */
  readonly score?: PredictionScore;
}

/** From the trials of one floor to what they say of another. */
export interface FillStory {
  readonly format?: string;
  readonly from: FillFloor;
  /** The trials that are of this format, in the order given; places in what follows count among all that were given. */
  readonly read: TrialsInSi;
  readonly otherFormat: readonly number[];
  readonly slips: readonly TrialSlips[];
  readonly agreed: AgreedContents;
  readonly estimate?: EstimateAnswer;
  /** Counts for the goal on the floor of the trials. */
  readonly presets?: GoalPresets;
  /** Trials that could be made next, the one that narrows the answer most first. */
  readonly next?: readonly TrialAdvice[];
  readonly to?: FillFloor;
  /** Trials that were made on the other floor. */
  readonly there?: TrialsInSi;
  readonly other?: OtherFloor;
  readonly none: readonly NoAnswer[];
}

const placeOf = (
  book: Book,
  asked: string | undefined,
  role: 'built on' | 'bound for',
  not?: number,
): number | undefined => {
  const floors = book.floors ?? [];
  const found = floors.findIndex(
    (floor, i) => i !== not && (asked === undefined ? floor.role === role : floor.tag === asked),
  );
  return found < 0 ? undefined : found;
};

/** The counts that are foretold: of the call, else of the book there, else the last that a trial had, else of the book here. */
const presetsThere = (
  from: FillFloor,
  to: FillFloor,
  { trials, preset }: FillAsk,
): readonly { readonly count?: number; readonly by: PresetFrom }[] =>
  (to.uncertain?.system.lanes ?? []).map(({ tag }, i) => {
    if (preset !== undefined) return { count: preset, by: 'call' as const };
    const own = to.presets[i];
    if (own !== undefined) return { count: own, by: 'book' as const };
    const last = trials.findLast((trial) => trial.lane === tag && trial.floor === from.tag)?.preset;
    if (last !== undefined) return { count: last, by: 'trials' as const };
    const here = from.presets[i];
    return { by: 'book' as const, ...(here === undefined ? {} : { count: here }) };
  });

/**
 * What the trials of one floor say: which values are likely slips, what each lane does, and what it will do on another
 * floor.
 *
 * Method   trials through the balance to volumes; `estimateLanes` on the floor of the book with what is not sure of its
 *          supply; `predictOtherFloor` with the same of the other, `presetsForLevel` or `presetsForVolume` on both
 * Returns  first what the trials say of the lanes, then all of it; nothing where the book has no floor at all. What can't
 *          be answered is named with what would answer it
 * Assumes  the book has been read by `readBook`
 */
export function* fillStories(book: Book, ask: FillAsk): Generator<FillStory> {
  const reader = bookReader(book);
  const here =
    placeOf(book, ask.from, 'built on') ??
    (ask.from === undefined && (book.floors ?? []).length > 0 ? 0 : undefined);
  if (here === undefined) return;
  const format = formatOf(book, ask.format).format?.tag;
  const isOther = (trial: WeighedTrial): boolean => trial.format !== undefined && trial.format !== format;
  const otherFormat = ask.trials.flatMap((trial, i) => (isOther(trial) ? [i] : []));
  // left out without another place for those that stay
  const trials = ask.trials.map((trial) => (isOther(trial) ? { ...trial, floor: '' } : trial));
  const otherPlace = placeOf(book, ask.to, 'bound for', here);
  const floors = book.floors ?? [];
  const measured = {
    ...(otherPlace === undefined
      ? {}
      : measuredBetween(ask.allowances ?? [], floors[here]!.tag, floors[otherPlace]!.tag)),
    ...ask.measured,
  };
  const from = fillFloor(reader, here, format, measured['run-column']);
  const read = trialsInSi(reader, from, trials);
  const slips = trialSlips(reader, from, read.trials);
  const agreed = agreedContents(reader, ratePathOf(book, from.inputs.formatPath), ask.rule);
  const base = { from, read, otherFormat, slips, agreed, ...(format === undefined ? {} : { format }) };
  const none: NoAnswer[] = [];
  const unknownFloor = (floor: FillFloor): void => {
    none.push({ code: 'floorUnknown', floor: floor.tag, places: floor.missing });
  };
  const to =
    otherPlace === undefined ? undefined : fillFloor(reader, otherPlace, format, measured['run-column']);
  const there = to === undefined ? undefined : trialsInSi(reader, to, trials);
  const withOther = { ...(to === undefined ? {} : { to }), ...(there === undefined ? {} : { there }) };
  if (read.trials.length === 0) none.push({ code: 'noTrials', floor: from.tag });
  if (from.uncertain === undefined) unknownFloor(from);
  if (to === undefined) none.push({ code: 'noOtherFloor' });
  else if (to.uncertain === undefined) unknownFloor(to);
  const estimated = estimateOf(reader, from, read);
  if (from.uncertain === undefined || estimated === undefined) {
    yield { ...base, ...withOther, none };
    return;
  }
  const { level } = from.inputs.model;
  yield { ...base, ...withOther, estimate: estimated, none };
  if (estimated.kind === 'refused') return;
  const { estimate } = estimated;
  const goal = ask.goal ?? (agreed.rule === undefined || level === undefined ? 'level' : 'volume');
  const forGoal = {
    goal,
    ...(ask.tolerance === undefined ? {} : { tolerance: ask.tolerance }),
    ...(ask.variation === undefined ? {} : { variation: ask.variation }),
    ...(ask.label === undefined ? {} : { label: ask.label }),
  };
  const confidence = ask.confidence === undefined ? {} : { confidence: ask.confidence };
  const capacity = capacityOf(reader, from, ask.samples ?? []);
  const place = { reader, estimate, agreed, capacity, ...confidence };
  const soFar = {
    ...base,
    ...withOther,
    estimate: estimated,
    presets: goalPresets({ ...place, floor: from, allowances: [] }, forGoal),
  };
  const room = level === undefined ? {} : { capacity: level };
  const counts = presetsThere(from, to?.uncertain === undefined ? from : to, ask);
  const known = counts.flatMap(({ count }) => count ?? []);
  if (to?.uncertain === undefined) {
    // where there is no other floor, what narrows the answer here
    const next =
      known.length < counts.length
        ? []
        : adviseTrial({ estimate, floor: from.uncertain, presets: known, ...room });
    yield { ...soFar, next, none };
    return;
  }
  const without = to.uncertain.system.lanes.filter((_, i) => counts[i]?.count === undefined);
  const change = floorAllowances(reader, from, to, { ...ask, measured });
  if (without.length > 0 || change === undefined) {
    yield { ...soFar, none: [...none, { code: 'noPreset', lanes: without.map(({ tag }) => tag) }] };
    return;
  }
  const { allowances } = change;
  const row = { estimate, floor: to.uncertain, presets: known, allowances };
  const forecast = rowForecast(estimate.basis, row, known);
  const next = forecast === undefined ? [] : adviseTrial({ ...row, forecast, ...room });
  const prediction = predictOtherFloor({
    ...row,
    forecast,
    ...confidence,
    ...(to.times === undefined ? {} : { times: to.times }),
  });
  if (prediction === undefined) {
    yield { ...soFar, next, none: [...none, { code: 'neverEnds', floor: to.tag }] };
    return;
  }
  yield {
    ...soFar,
    next,
    none,
    other: {
      floor: to,
      presets: known,
      presetsFrom: counts.map(({ by }) => by),
      change,
      prediction,
      ...(capacity === undefined ? {} : { reached: reachedShare(prediction, capacity) }),
      start: goalPresets({ ...place, floor: to, allowances }, forGoal),
      ...(there === undefined || there.trials.length === 0
        ? {}
        : {
            score: scorePrediction(
              prediction,
              there.trials.map(({ fill }) => fill),
            ),
          }),
    },
  };
}

/** The whole of it; undefined where the book has no floor at all. */
export const fillStory = (book: Book, ask: FillAsk): FillStory | undefined =>
  [...fillStories(book, ask)].at(-1);
