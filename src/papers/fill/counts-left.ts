import type { PaperWords } from '../paper-words.ts';
import type { Citations, Marks } from '../workings/citations.ts';
import type { FillOf, StandingCounts } from './fill-of.ts';
import { contentsMark } from './foretold-workings.ts';
import { shortText } from './short-text.ts';
import { type WithinText, withinText } from './within-text.ts';

/** Ends of an interval as shares of the picture. */
type Stretch = readonly [from: number, to: number];

/** The count that stands in one lane and what it gives. */
export interface CountLeft {
  readonly lane: string;
  /** Empty where nobody says one: then there is room to write. */
  readonly count: string;
  readonly from: string;
  readonly volume?: WithinText;
  readonly bottle?: WithinText;
  readonly mark: Marks;
  /** Share of bottles that stay short of their level. */
  readonly short: string;
  readonly picture?: { readonly mean: Stretch; readonly bottle: Stretch; readonly level?: number };
}

export interface CountsLeft {
  readonly title: string;
  readonly lanes: readonly CountLeft[];
  readonly told: readonly string[];
}

/** Room at both ends of the picture, as a share of it. */
const edge = 0.06;

const axisOf = ({ given, capacity }: StandingCounts): ((value: number) => number) => {
  const ends = [
    ...(given?.lanes ?? []).flatMap(({ bottle }) => [bottle.lower, bottle.upper]),
    ...(capacity === undefined ? [] : [capacity.capacity.mean]),
  ];
  const [low, high] = [Math.min(...ends), Math.max(...ends)];
  return (value) => edge + ((1 - 2 * edge) * (value - low)) / (high - low || 1);
};

/** The counts that stand on a floor, with what a bottle gets and how many stay short of their level. */
export const countsLeft = (
  { counts, floor, name }: FillOf,
  citations: Citations,
  paper: PaperWords,
): CountsLeft => {
  const { say, quantity } = paper;
  const { lanes, given, reached, capacity } = counts;
  const at = axisOf(counts);
  const level = capacity?.capacity.mean;
  return {
    title: say('filled.counts.at', { floor: name }),
    lanes: lanes.map(({ lane, count, from }, i) => {
      const one = given?.lanes[i];
      return {
        lane,
        count: count === undefined ? '' : String(count),
        from: count === undefined ? '' : say(`filled.from.${from.replace(/\W/g, '')}`),
        mark: one === undefined ? [] : contentsMark(one, floor, citations),
        short: shortText(reached?.[i], paper),
        ...(one === undefined
          ? {}
          : {
              volume: withinText(one.volume, 'volume', paper),
              bottle: withinText(one.bottle, 'volume', paper),
              picture: {
                mean: [at(one.volume.lower), at(one.volume.upper)] as const,
                bottle: [at(one.bottle.lower), at(one.bottle.upper)] as const,
                ...(level === undefined ? {} : { level: at(level) }),
              },
            }),
      };
    }),
    told: [
      say(given === undefined ? 'filled.counts.none' : 'filled.counts.how'),
      ...(given !== undefined && capacity === undefined ? [say('fill.preset.levelMissing')] : []),
      ...(capacity === undefined
        ? []
        : [
            say('filled.capacity', {
              mean: quantity(capacity.capacity.mean, 'volume', 4).text,
              deviation: quantity(capacity.capacity.deviation, 'volume', 2).text,
              from: say(`fill.capacity.${capacity.from}`),
            }),
          ]),
    ],
  };
};
