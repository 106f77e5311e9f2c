import type { FillStory, WeighedTrial } from '../../floor/fill/index.ts';
import type { NamedHead } from '../named-heads.ts';
import { type PaperHead, type PaperOptions, paperHead, subtitleOf } from '../paper-head.ts';
import type { PaperWords } from '../paper-words.ts';
import { headLines } from '../proof-lines.ts';
import type { Citations } from '../workings/citations.ts';
import { type CountsLeft, countsLeft } from './counts-left.ts';
import type { FillOf } from './fill-of.ts';
import { type Foretold, foretold } from './foretold.ts';
import { type LanesFound, lanesFound } from './lanes-found.ts';
import { type PrintedLot, printedLot } from './lots-list.ts';
import { type TrialsList, trialsList } from './trials-list.ts';

/** What the fill certificate is made from. */
export interface FillAsked {
  readonly fill: FillOf;
  /** All trials of the records, in their order. */
  readonly trials: readonly WeighedTrial[];
  readonly heads: readonly NamedHead[];
}

export interface FillContent {
  readonly head: PaperHead;
  readonly title: string;
  readonly subtitle: string;
  readonly trials: readonly TrialsList[];
  readonly found: readonly LanesFound[];
  readonly counts: CountsLeft;
  readonly foretold?: Foretold;
  readonly lots: readonly PrintedLot[];
  readonly heads: readonly string[];
  readonly words: Readonly<Record<string, string>>;
}

const wordKeys = [
  'about',
  'care.text',
  'trials',
  'trials.none',
  'row',
  'lane',
  'count',
  'time',
  'weighed',
  'tare',
  'contents',
  'overflow',
  'told',
  'found',
  'pulses',
  'afterRun',
  'kv',
  'drip',
  'spread',
  'bottles',
  'counts',
  'from',
  'mean',
  'bottle',
  'short',
  'working',
  'picture',
  'picture.key',
  'fillTime',
  'runsAfter',
  'start',
  'lots',
  'lots.none',
  'gross',
  'came',
  'worksheet',
  'sign',
] as const;

const signKeys = ['sign.builder', 'sign.site', 'sign.name', 'sign.signature', 'sign.day', 'heads'] as const;

const hasTrials = (story: FillStory | undefined): story is FillStory =>
  story !== undefined && story.read.trials.length > 0;

/** Everything that stands on the fill certificate of one floor. */
export const fillContent = (
  { fill, trials, heads }: FillAsked,
  options: PaperOptions,
  citations: Citations,
  paper: PaperWords,
): FillContent => {
  const { say, book } = paper;
  const { here, across, lots, name } = fill;
  const nameOf = (tag: string): string => book.floors?.find((one) => one.tag === tag)?.name ?? tag;
  const stories = [...new Set([here, across])].filter(hasTrials);
  // without a trial anywhere it says once that there is none
  const asked = stories.length > 0 ? stories : here === undefined ? [] : [here];
  const told = hasTrials(across) ? foretold(across, nameOf, citations, paper) : undefined;
  return {
    head: { ...paperHead(say('filled.title'), options, paper), caution: say('filled.foot') },
    title: say('filled.of', { floor: name }),
    subtitle: subtitleOf(paper, book.line?.formats?.find(({ tag }) => tag === here?.format)?.name ?? ''),
    trials: stories.map((story) => trialsList(story, trials, nameOf(story.from.tag), paper)),
    found: asked.map((story) => lanesFound(story, nameOf(story.from.tag), citations, paper)),
    counts: countsLeft(fill, citations, paper),
    ...(told === undefined ? {} : { foretold: told }),
    lots: lots.map((lot) => printedLot(lot, citations, paper)),
    heads: headLines(heads, paper),
    words: {
      ...Object.fromEntries(wordKeys.map((key) => [key, say(`filled.${key}`)])),
      ...Object.fromEntries(signKeys.map((key) => [key, say(`protocol.${key}`)])),
      care: say('paper.care'),
      key: say('workings.key'),
    },
  };
};
