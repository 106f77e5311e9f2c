import { shareDeviation } from '../../fill/column-shares.ts';
import type { Within } from '../../fill/student-sum.ts';
import type { FillStory } from '../../floor/fill/index.ts';
import type { Kind } from '../../quantity/index.ts';
import type { PaperWords } from '../paper-words.ts';
import type { Citations, Marks } from '../workings/citations.ts';
import { contentsMark, timeMark } from './foretold-workings.ts';
import { shortText } from './short-text.ts';
import { noAnswerText } from './trials-list.ts';
import { type WithinText, withinText } from './within-text.ts';

export interface ForetoldLaneText {
  readonly lane: string;
  readonly count: string;
  readonly from: string;
  readonly volume: WithinText;
  readonly time: WithinText;
  readonly afterRun: WithinText;
  readonly marks: Marks;
  readonly short: string;
  /** Count to begin with for the goal; empty where none can be named. */
  readonly start: string;
}

export interface Foretold {
  readonly title: string;
  readonly lanes: readonly ForetoldLaneText[];
  /** Row, station and rate. */
  readonly around: readonly { readonly name: string; readonly value: WithinText }[];
  /** What was allowed for, whether it was scored, why there is no answer. */
  readonly told: readonly string[];
}

/** What the trials on one floor foretold of the other. */
export const foretold = (
  story: FillStory,
  nameOf: (tag: string) => string,
  citations: Citations,
  paper: PaperWords,
): Foretold | undefined => {
  const { say, percent } = paper;
  const { from, to, other, none } = story;
  if (to === undefined) return undefined;
  const title = say('filled.foretold', { from: nameOf(from.tag), to: nameOf(to.tag) });
  if (other === undefined) {
    const why = none.filter(({ code }) => code !== 'noOtherFloor').map((one) => noAnswerText(one, paper));
    return { title, lanes: [], around: [], told: why };
  }
  const { prediction, presetsFrom, reached, start, change, score } = other;
  const text = (of: Within, kind: Kind): WithinText => withinText(of, kind, paper);
  const wanted = 'none' in start ? [] : start.goal === 'level' ? start.presets.lanes : start.presets;
  const around: readonly (readonly [word: string, of: Within | undefined, kind: Kind])[] = [
    ['slowest', prediction.rowTime, 'time'],
    ['station', prediction.stationTime, 'time'],
    ['rate', prediction.rate, 'rate'],
  ];
  return {
    title,
    lanes: prediction.lanes.map((one, i) => ({
      lane: one.lane,
      count: String(one.preset),
      from: say(`filled.from.${presetsFrom[i] === 'trials' ? 'trials' : 'book'}`),
      volume: text(one.volume, 'volume'),
      time: text(one.time, 'time'),
      afterRun: text(one.afterRun, 'volume'),
      marks: [...contentsMark(one, to.tag, citations), ...timeMark(one, to.tag, citations)],
      short: shortText(reached?.[i], paper),
      start: wanted[i] === undefined ? '' : String(wanted[i].preset),
    })),
    around: around.flatMap(([word, of, kind]) =>
      of === undefined ? [] : [{ name: say(`filled.${word}`), value: text(of, kind) }],
    ),
    told: [
      ...change.allowances.map(({ code, shift, deviation, source }) =>
        say('filled.allowance', {
          name: say(`fill.allowance.${code}`),
          shift: percent(shift),
          deviation: percent(deviation),
          source: say(`fill.source.${source}`),
        }),
      ),
      ...(change.allowances.length === 0 ? [say('fill.waterOnly')] : []),
      ...(change.airRatio === undefined && !change.waived ? [say('fill.airUnknown')] : []),
      ...change.runs.map(({ of, floor, column }) =>
        say(`fill.column.${column.source}`, {
          floor: nameOf(floor),
          share: percent(column.share),
          deviation: percent(shareDeviation(column)),
          volume: paper.quantity(column.volume, 'volume', 2).text,
          narrower: percent(prediction.ofRuns[of]),
        }),
      ),
      ...('none' in start ? [say(`fill.preset.${start.none}`)] : []),
      ...(score === undefined
        ? []
        : [
            say('filled.score', {
              inside: score.inside,
              of: score.of,
              floor: nameOf(to.tag),
              confidence: percent(score.confidence),
            }),
          ]),
      say('fill.moves', { n: prediction.realMoves }),
    ],
  };
};
