import type { Doubt } from '../../fill/separable.ts';
import { type Estimated, withinOf } from '../../fill/student-sum.ts';
import type { FillStory } from '../../floor/fill/index.ts';
import type { Kind } from '../../quantity/index.ts';
import type { PaperWords } from '../paper-words.ts';
import type { Citations } from '../workings/citations.ts';
import { noAnswerText } from './trials-list.ts';
import { type WithinText, withinText } from './within-text.ts';

/** What the trials say of one lane, each value with the interval that holds the truth. */
export interface FoundLane {
  readonly lane: string;
  readonly pulses: WithinText;
  readonly afterRun: WithinText;
  readonly kv: WithinText;
  readonly drip: WithinText;
  /** How its own bottles differ, one standard deviation; empty where too few were weighed. */
  readonly spread: string;
  readonly bottles: string;
}

export interface LanesFound {
  readonly title: string;
  readonly lanes: readonly FoundLane[];
  readonly how: string;
  readonly doubts: readonly string[];
}

/** Of every interval on the certificate, as on the page. */
export const confidence = 0.9;

/** Doubts that name certain bottles, or lanes that belong together. */
const single: readonly Doubt['code'][] = ['outlier', 'bottles-swapped', 'lanes-swapped'];

/** The same doubt of several lanes is told once. */
const together = (doubts: readonly Doubt[]): readonly Doubt[] =>
  doubts.flatMap((doubt, i) => {
    if (single.includes(doubt.code)) return [doubt];
    const same = doubts.filter(({ code }) => code === doubt.code);
    return same[0] === doubts[i] ? [{ ...doubt, lanes: same.flatMap(({ lanes }) => lanes) }] : [];
  });

/** The lanes by the trials of a floor, or why they say nothing. */
export const lanesFound = (
  { estimate, none, read }: FillStory,
  name: string,
  citations: Citations,
  paper: PaperWords,
): LanesFound => {
  const { say, quantity, percent } = paper;
  const title = say('filled.lanes.at', { floor: name, confidence: percent(confidence) });
  if (estimate?.kind !== 'estimate') {
    const why = [
      ...none
        .filter(({ code }) => code === 'floorUnknown' || code === 'noTrials')
        .map((one) => noAnswerText(one, paper)),
      ...(estimate?.problems ?? []).map(({ code }) => say(`fill.trial.${code}`)),
    ];
    return { title, lanes: [], how: '', doubts: [...new Set(why)] };
  }
  const { lanes, doubts, ownSpread, timeSpread } = estimate.estimate;
  const within = (one: Estimated, kind: Kind): WithinText =>
    withinText(withinOf(one, confidence), kind, paper);
  return {
    title,
    lanes: lanes.map((one) => ({
      lane: one.lane,
      pulses: within(one.pulses, 'pulseDensity'),
      afterRun: within(one.afterRun, 'time'),
      kv: within(one.kv, 'flowCoefficient'),
      drip: within(one.drip, 'volume'),
      spread: one.spread === undefined ? '' : quantity(one.spread.value, 'volume', 2).text,
      bottles: String(one.trials),
    })),
    how: say('filled.lanes.how', {
      volume: quantity(ownSpread.value, 'volume', 2).text,
      time: quantity(timeSpread.value, 'time', 2).text,
      weighing: citations.sheet('contents/volume-by-weighing'),
      line: citations.sheet('contents/lane-line-weighted'),
    }),
    doubts: together(doubts).map(({ code, lanes: of, trials }) =>
      say(`fill.doubt.${code}`, {
        lanes: of.join(', '),
        trials: trials.map((at) => String((read.trials[at]?.trial ?? at) + 1)).join(', '),
      }),
    ),
  };
};
