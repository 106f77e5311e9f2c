import type { Assessment, FloorAssessment, Remedy } from '../../floor/assessment.ts';
import { type PaperHead, type PaperOptions, paperHead, subtitleOf } from '../paper-head.ts';
import type { PaperWords } from '../paper-words.ts';
import type { Citations } from '../workings/citations.ts';
import { chartsOf, type XyChart } from './charts.ts';
import { type CyclePart, cyclePart } from './cycle.ts';
import { type FiguresTable, figuresTable, type LanesTable, lanesTable } from './figures-table.ts';
import { type RemedyGroup, remedyGroups } from './remedies-list.ts';
import { type RestsOn, restsOn } from './rests-on.ts';
import { type ShownFloor, type Spread, spreadOf } from './spine.ts';
import { type UtilitiesPart, utilitiesPart } from './utilities-table.ts';

/** Everything that stands on the prediction, worded and in the units of the reader. */
export interface PredictionContent {
  readonly head: PaperHead;
  readonly subtitle: string;
  readonly spreads: readonly Spread[];
  readonly figures: FiguresTable;
  readonly utilities: UtilitiesPart;
  readonly cycle: CyclePart;
  readonly lanes: readonly LanesTable[];
  readonly charts: readonly XyChart[];
  readonly remedies: readonly RemedyGroup[];
  readonly rests: readonly RestsOn[];
  /** Words of headings, columns and keys. */
  readonly words: Readonly<Record<string, string>>;
}

/** The builder's floor to the left, the bound-for floor to its right, further ones in the order of the book. */
const rank = ({ role }: FloorAssessment): number => ['built on', 'bound for', 'other'].indexOf(role);

/** Floors in the order of their hues. */
export const facing = (floors: readonly FloorAssessment[]): readonly FloorAssessment[] =>
  floors.toSorted((a, b) => rank(a) - rank(b));

const inPairs = <T>(all: readonly T[]): readonly (readonly T[])[] =>
  all.length === 0 ? [] : [all.slice(0, 2), ...inPairs(all.slice(2))];

const wordKeys = [
  'question',
  'agreed',
  'spine',
  'spine.finding',
  'bar',
  'absent',
  'ifSaid',
  'assumedMark',
  'figures',
  'utilities',
  'utilities.trade',
  'utilities.question',
  'utilities.asks',
  'utilities.has',
  'utilities.verdict',
  'utilities.more',
  'figure',
  'holds',
  'remedies',
  'remedies.none',
  'remedy.what',
  'remedy.where',
  'remedy.next',
  'remedy.none',
  'charts',
  'lanes',
  'known',
  'known.missing',
  'known.assumed',
  'known.notes',
  'known.nothing',
];

export const keyWords = ({ say }: PaperWords): Readonly<Record<string, string>> =>
  Object.fromEntries(
    ['asked', 'most', 'has', 'missing', 'unknown', 'interval'].map((key) => [key, say(`paper.key.${key}`)]),
  );

export const predictionContent = (
  { floors, format }: Assessment,
  remedies: readonly Remedy[],
  options: PaperOptions,
  citations: Citations,
  paper: PaperWords,
): PredictionContent => {
  const shown: readonly ShownFloor[] = facing(floors).map((floor, hue) => ({ floor, hue }));
  return {
    head: paperHead(paper.say('prediction.title'), options, paper),
    subtitle: subtitleOf(paper, format),
    spreads: inPairs(shown).map((pair) => spreadOf(pair, citations, paper)),
    figures: figuresTable(shown, citations, paper),
    utilities: utilitiesPart(shown, citations, paper),
    cycle: cyclePart(shown, citations, paper),
    lanes: shown
      .filter(({ floor }) => floor.lanes.length > 0)
      .map(({ floor }) => lanesTable(floor, citations, paper)),
    charts: chartsOf(shown, citations, paper),
    remedies: remedyGroups(shown, remedies, paper),
    rests: shown.map((one) => restsOn(one, paper)),
    words: {
      ...Object.fromEntries(wordKeys.map((key) => [key, paper.say(`prediction.${key}`)])),
      ...keyWords(paper),
      workingKey: paper.say('workings.key'),
      assumed: paper.say('paper.assumed'),
      care: paper.say('paper.care'),
    },
  };
};
