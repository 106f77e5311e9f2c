import type { FillStory, NoAnswer, WeighedTrial } from '../../floor/fill/index.ts';
import { asWritten } from '../as-written.ts';
import type { PaperWords } from '../paper-words.ts';

/** One bottle as it was weighed. */
export interface PrintedTrial {
  readonly row: string;
  readonly lane: string;
  readonly count: string;
  readonly time: string;
  readonly weighed: string;
  readonly tare: string;
  /** By its weighing, in the units of the reader. */
  readonly contents: string;
  readonly overflow: string;
  readonly told: string;
}

export interface TrialsList {
  readonly title: string;
  readonly trials: readonly PrintedTrial[];
  /** Instruments, what was assumed, what was left out. */
  readonly notes: readonly string[];
}

/** Why there is no answer, as a sentence. */
export const noAnswerText = (none: NoAnswer, { say, place }: PaperWords): string => {
  if (none.code === 'floorUnknown') {
    return say('fill.none.floorUnknown', { floor: none.floor, places: none.places.map(place).join('; ') });
  }
  if (none.code === 'noPreset') return say('fill.none.noPreset', { lanes: none.lanes.join(', ') });
  return say(`fill.none.${none.code}`, 'floor' in none ? { floor: none.floor } : {});
};

const written = (text: string | undefined, paper: PaperWords): string => asWritten(text ?? '', paper);

/** What several bottles have alike, said once. */
const together = (
  all: readonly (readonly [text: string, trial: number])[],
  { say }: PaperWords,
): readonly string[] => {
  const trials = new Map<string, number[]>();
  for (const [text, trial] of all) trials.set(text, [...(trials.get(text) ?? []), trial + 1]);
  return [...trials].map(([text, of]) => say('filled.trials.note', { n: of.length, text }));
};

const instrumentsOf = (trials: readonly WeighedTrial[], paper: PaperWords): readonly string[] =>
  [
    ...new Set(
      trials
        .filter(({ instrument }) => instrument !== undefined)
        .map(({ instrument = '', resolution, calibrated }) =>
          [
            instrument,
            ...(resolution === undefined
              ? []
              : [paper.say('filled.resolution', { resolution: written(resolution, paper) })]),
            ...(calibrated === undefined
              ? []
              : [paper.say('filled.calibrated', { day: paper.day(calibrated) })]),
          ].join(', '),
        ),
    ),
  ].map((text) => paper.say('filled.instrument', { text }));

/** The trials of one floor with what was made of each. */
export const trialsList = (
  { from, read, estimate, slips }: FillStory,
  given: readonly WeighedTrial[],
  name: string,
  paper: PaperWords,
): TrialsList => {
  const { say } = paper;
  const found = estimate?.kind === 'estimate' ? estimate.estimate : undefined;
  const own = read.trials.map(({ trial }) => given[trial]).filter((one) => one !== undefined);
  return {
    title: say('filled.trials.at', { floor: name, n: read.trials.length }),
    trials: read.trials.map(({ trial, fill }) => {
      const one = given[trial];
      return {
        row: one?.row ?? '',
        lane: fill.lane,
        count: String(fill.preset),
        time: written(one?.time, paper),
        weighed: written(one?.gross ?? one?.volume ?? one?.level, paper),
        tare: written(one?.tare, paper),
        contents: fill.volume === undefined ? '' : paper.quantity(fill.volume, 'volume', 4).text,
        overflow: one?.overflow === undefined ? '' : say(`filled.overflow.${one.overflow}`),
        told: [one?.by, one?.at === undefined ? undefined : paper.moment(one.at), one?.remark]
          .filter((part) => part !== undefined)
          .join(', '),
      };
    }),
    notes: [
      ...instrumentsOf(own, paper),
      ...together(
        read.notes.map(({ code, trial }) => [say(`fill.note.${code}`), trial]),
        paper,
      ),
      ...together(
        (found?.apart ?? []).map(({ why, trial }) => [say(`fill.apart.${why}`), trial]),
        paper,
      ),
      ...(read.refused.length === 0
        ? []
        : [say('filled.refused', { n: read.refused.length, floor: from.tag })]),
      ...(slips.length === 0 ? [] : [say('filled.slips', { n: slips.length })]),
    ],
  };
};
