import type { Book } from '../../book/index.ts';
import { judgeLot, type LotJudgement } from '../../fill/judge-lot.ts';
import { type FloorPrediction, predictOtherFloor } from '../../fill/predict-other-floor.ts';
import type { WeighedLot as LotInSi } from '../../fill/weighed-lot.ts';
import { bookReader } from '../../floor/book-reader.ts';
import {
  type CapacityFound,
  capacityOf,
  type FillStory,
  fillStory,
  lotInSi,
  type MeasuredSample,
  type WeighedLot,
} from '../../floor/fill/index.ts';
import { reachedShare } from '../../floor/fill/reached-share.ts';
import type { SettingRegister } from '../../proof/settings/index.ts';
import type { Problem } from '../../quantity/problem.ts';
import { allowancesOf } from '../../record/allowances.ts';
import type { Envelope } from '../../record/envelope.ts';
import { lotsOf } from '../../record/lots.ts';
import { samplesOf } from '../../record/samples.ts';
import { settingMoments } from '../../record/setting-moments.ts';
import { trialsOf } from '../../record/trials.ts';

/** A lot with what its rule says of it. */
export interface CertifiedLot {
  readonly given: WeighedLot;
  /** Absent where no rule was agreed, or the lot can't be read. */
  readonly lot?: LotInSi;
  readonly judged?: LotJudgement;
  readonly problems: readonly Problem[];
}

/** Who says a count: as it was recorded last, the book, or the last trial. */
export type CountFrom = 'as left' | 'shipped' | 'run-off' | 'book' | 'trials';

/** The counts that stand on a floor, and what the trials say that they give there. */
export interface StandingCounts {
  readonly lanes: readonly { readonly lane: string; readonly count?: number; readonly from: CountFrom }[];
  /** Absent where the trials or the book don't say enough. */
  readonly given?: FloorPrediction;
  /** Share of bottles by lane that reach their level; absent where the level is not known. */
  readonly reached?: readonly number[];
  readonly capacity?: CapacityFound;
}

/** What the fill certificate of one floor is made from. */
export interface FillOf {
  readonly floor: string;
  readonly name: string;
  /** The trials that were made on it; absent where the book has no floor that could be spoken of. */
  readonly here?: FillStory;
  /** From the floor that the line is built on to the one that it is bound for. */
  readonly across?: FillStory;
  readonly counts: StandingCounts;
  readonly lots: readonly CertifiedLot[];
}

const estimateOf = (story: FillStory | undefined) =>
  story?.estimate?.kind === 'estimate' ? story.estimate.estimate : undefined;

const countsOn = (
  floor: string,
  story: FillStory | undefined,
  lanes: readonly string[],
  { rows }: SettingRegister,
  format: string | undefined,
): StandingCounts['lanes'] =>
  lanes.map((lane, i) => {
    const row = rows.find(
      ({ row: { sort, on, ...of } }) =>
        sort === 'preset' &&
        on === lane &&
        (of.format === undefined || of.format === format) &&
        (of.floor === undefined || of.floor === floor),
    );
    const moment = settingMoments.findLast(
      (at) => row?.at[at]?.value !== undefined && row.at[at]?.record.floor === floor,
    );
    const left = moment === undefined ? undefined : row?.at[moment]?.value;
    if (moment !== undefined && left !== undefined) return { lane, count: Math.round(left), from: moment };
    const side = story?.from.tag === floor ? story.from : story?.to?.tag === floor ? story.to : undefined;
    const own = side?.presets[i];
    if (own !== undefined) return { lane, count: own, from: 'book' };
    const tried = story?.read.trials.findLast(({ fill }) => fill.lane === lane)?.fill.preset;
    return { lane, from: 'trials', ...(tried === undefined ? {} : { count: tried }) };
  });

const standingCounts = (
  book: Book,
  floor: string,
  { here, across }: Pick<FillOf, 'here' | 'across'>,
  samples: readonly MeasuredSample[],
  register: SettingRegister,
): StandingCounts => {
  // trials on the floor itself tell more than any that were made elsewhere
  const own = estimateOf(here);
  const story = own === undefined ? across : here;
  const lanes = (book.line?.stations ?? []).flatMap((one) =>
    one.kind === 'fill' ? (one.lanes ?? []).map(({ tag }) => tag) : [],
  );
  const counts = countsOn(floor, story, lanes, register, story?.format);
  const estimate = estimateOf(story);
  const side = story?.from.tag === floor ? story.from : story?.to?.tag === floor ? story.to : undefined;
  const presets = counts.flatMap(({ count }) => count ?? []);
  // what two floors change is known only where the whole of it could be foretold
  const allowances = side === story?.from ? [] : story?.other?.change.allowances;
  if (
    estimate === undefined ||
    side?.uncertain === undefined ||
    allowances === undefined ||
    presets.length < counts.length
  ) {
    return { lanes: counts };
  }
  const given = predictOtherFloor({
    estimate,
    floor: side.uncertain,
    presets,
    allowances,
    ...(side.times === undefined ? {} : { times: side.times }),
  });
  const capacity = capacityOf(bookReader(book), side, samples);
  return {
    lanes: counts,
    ...(given === undefined ? {} : { given }),
    ...(capacity === undefined ? {} : { capacity }),
    ...(given === undefined || capacity === undefined ? {} : { reached: reachedShare(given, capacity) }),
  };
};

const certified = (book: Book, given: WeighedLot): CertifiedLot => {
  const read = lotInSi(book, given);
  if (!read.ok) return { given, problems: read.problems };
  const { lot } = read.value;
  return { given, problems: [], ...(lot === undefined ? {} : { lot, judged: judgeLot(lot) }) };
};

/**
 * What the records say of the fill of one floor: its trials, the counts that stand there, what was foretold, its lots.
 *
 * Method   `fillStory` on the floor and from the floor that the line is built on; the counts that were recorded last put
 *          through the estimate; `judgeLot`
 * Symbols  records  the set, whole by verifyRecords
 * Cost     some tens of milliseconds a story
 */
export const fillOf = (
  book: Book,
  floor: { readonly floor: string; readonly name: string },
  register: SettingRegister,
  records: readonly Envelope[],
  format?: string,
): FillOf => {
  const trials = trialsOf(records);
  const samples = samplesOf(records);
  const ask = {
    trials,
    samples,
    allowances: allowancesOf(records),
    ...(format === undefined ? {} : { format }),
  };
  const built = book.floors?.find(({ role }) => role === 'built on')?.tag;
  const isBuilt = built === undefined || built === floor.floor;
  const here = fillStory(book, { ...ask, from: floor.floor });
  // on the builder's floor the two are one story
  const across = isBuilt ? here : fillStory(book, { ...ask, from: built, to: floor.floor });
  const stories = {
    ...(here === undefined ? {} : { here }),
    ...(across === undefined ? {} : { across }),
  };
  return {
    ...stories,
    floor: floor.floor,
    name: floor.name,
    counts: standingCounts(book, floor.floor, stories, samples, register),
    lots: lotsOf(records)
      .filter((lot) => lot.floor === floor.floor && (format === undefined || lot.format === format))
      .map((lot) => certified(book, lot)),
  };
};
