import type { Assessment, Finding, FloorAssessment, Remedy } from '../../floor/assessment.ts';
import { barShape } from '../../floor/bar-shape.ts';
import { openQuestions } from '../../floor/questions/index.ts';
import type { Utility, UtilityFinding } from '../../floor/utilities/utility-finding.ts';
import { readEntry } from '../../quantity/read-entry.ts';
import { utilityName } from '../../text/words/utility-name.ts';
import {
  type AnyFinding,
  askedText,
  figureText,
  findingName,
  hasText,
  marginText,
  nameOf,
  utilityVerdictText,
} from '../finding-texts.ts';
import type { PaperWords } from '../paper-words.ts';
import type { Citations, Marks } from '../workings/citations.ts';
import { fixOf } from './fix-of.ts';
import { powerGlance } from './power-glance.ts';
import {
  type Preparation,
  type PreparationDraw,
  type PreparationRow,
  type Trade,
  type TradePage,
  trades,
} from './preparation-content.ts';
import { questionOf, tradeOf } from './question-of.ts';

/** What the plumber brings for the product, among the findings of the floor itself. */
const ofSupply: readonly string[] = ['manifoldPressure', 'makeUp', 'tankLevel', 'tankVolume', 'surge'];

/** The findings of a floor that a trade has to answer for. */
export const findingsOfTrades = ({ findings, utilities }: FloorAssessment): readonly Finding[] => [
  ...findings.filter(({ id }) => ofSupply.includes(id)),
  ...utilities.findings,
];

/** Sentences of a trade's findings, each once. */
const notesOf = ({ utilities }: FloorAssessment, trade: Trade, { say }: PaperWords): readonly string[] => [
  ...new Set(
    utilities.findings
      .filter(({ utility }) => utility === trade)
      .flatMap(({ notes }) => notes.map(({ code, parts }) => say(code, parts))),
  ),
];

const tieInOf = (tag: string | undefined, otherwise: string, { book, say }: PaperWords) => {
  const found = book.line?.tieIns?.find((one) => one.tag === tag);
  if (found === undefined) return { name: otherwise };
  const { name, connection } = found;
  const named = name ?? otherwise;
  return {
    tag: found.tag,
    name: connection === undefined ? named : say('preparation.has.connection', { name: named, connection }),
  };
};

/** Whom a row is of and what it is: what a section asks of the building stands under its name, else under the tie-in point. */
const placeOf = (
  finding: UtilityFinding,
  floor: FloorAssessment,
  paper: PaperWords,
): Pick<PreparationRow, 'tieIn' | 'what'> => {
  const section = paper.book.line?.sections?.find(({ tag }) => tag === finding.of);
  return section === undefined || finding.tieIn !== undefined
    ? {
        tieIn: tieInOf(finding.tieIn, paper.say(`utility.${finding.utility}`), paper),
        what: findingName(finding.id, floor, paper),
      }
    : {
        tieIn: { tag: section.tag, name: section.name ?? '' },
        what: utilityName(paper.say, `utility.question.${finding.question}`),
      };
};

const marksOf = (finding: AnyFinding, paper: PaperWords): readonly string[] => {
  const assumed = [...new Set([...finding.demand.assumed, ...finding.have.assumed])].map(paper.place);
  const refused = [...new Set((finding.refusals ?? []).flatMap(({ places }) => places))].map(paper.place);
  return [
    ...(assumed.length === 0 ? [] : [paper.say('preparation.assumed', { places: assumed.join('; ') })]),
    ...(refused.length === 0 ? [] : [paper.say('preparation.refused', { places: refused.join('; ') })]),
  ];
};

const rowOf = (
  finding: AnyFinding,
  place: Pick<PreparationRow, 'tieIn' | 'what'>,
  fix: string | undefined,
  mark: (working: number | undefined) => Marks,
  paper: PaperWords,
): PreparationRow => {
  const { demand, have, sense, verdict, question } = finding;
  const margin = marginText(finding, paper);
  const drawn = demand.value !== undefined && demand.value > 0 && demand.kind !== 'temperature';
  return {
    ...place,
    demand: askedText(finding, paper),
    has: hasText(finding, paper),
    demandMark: mark(demand.working),
    hasMark: mark(have.working),
    ...(question === undefined
      ? {}
      : { asks: paper.say(`utility.asks.${question}`), gives: paper.say(`utility.has.${question}`) }),
    ifSaid: finding.ifSaid,
    verdict,
    said: utilityVerdictText(finding, paper),
    marks: marksOf(finding, paper),
    ...(margin === undefined ? {} : { margin }),
    ...(fix === undefined ? {} : { fix }),
    ...(drawn ? { bar: { ...barShape(finding), most: sense === 'most' } } : {}),
  };
};

/** Currents at the voltage of the machine, which is not that of the floor where a transformer stands between. */
const ofMachineSide: readonly string[] = ['motorCurrent'];

const behindTransformer = ({ floor }: FloorAssessment, { book, say, utility }: PaperWords) => {
  const secondary = book.floors?.find(({ tag }) => tag === floor)?.power?.stepTransformer?.secondary;
  if (secondary === undefined) return undefined;
  const read = readEntry(secondary, 'voltage', { path: '' });
  return read.ok ? say('preparation.behind', { voltage: utility(read.value.value, 'voltage') }) : undefined;
};

const drawsOf = (
  floor: FloorAssessment,
  utility: Utility,
  mark: (working: number | undefined) => Marks,
  paper: PaperWords,
): readonly PreparationDraw[] => {
  const behind = behindTransformer(floor, paper);
  return floor.utilities.figures
    .filter((one) => one.utility === utility && (one.said ?? one.figure.value) !== undefined)
    .map(({ id, of, figure, said }) => ({
      name: utilityName(
        paper.say,
        `utility.figure.${id}`,
        of === undefined ? undefined : nameOf(paper.book, of),
      ),
      value: said ?? figureText(figure, paper),
      working: mark(figure.working),
      marks: [
        ...(behind !== undefined && ofMachineSide.includes(id) ? [behind] : []),
        ...(figure.assumed.length === 0 ? [] : [paper.say('paper.assumed')]),
      ],
    }));
};

/** What the trades bring to one floor and what they are asked, from its assessment. */
export const preparationOf = (
  assessment: Assessment,
  floorTag: string,
  remedies: readonly Remedy[],
  paper: PaperWords,
  citations?: Citations,
): Preparation => {
  const { book, say } = paper;
  const mark = (working: number | undefined): Marks => citations?.mark(floorTag, working) ?? [];
  const floor = assessment.floors.find((one) => one.floor === floorTag);
  if (floor === undefined) throw new Error(`no floor ${floorTag} in the assessment`);
  const asked = openQuestions(book, assessment, floorTag).filter(({ who }) => who === 'site');
  const product = book.line?.tieIns?.find(({ kind }) => kind === 'product')?.tag;
  const rowsOf = (trade: Trade): readonly PreparationRow[] => [
    ...(trade === 'water'
      ? floor.findings
          .filter(({ id }) => ofSupply.includes(id))
          .map((finding) =>
            rowOf(
              finding,
              { what: paper.name(finding.id), tieIn: tieInOf(product, say('preparation.product'), paper) },
              fixOf(finding, floorTag, assessment.floors, remedies, paper),
              mark,
              paper,
            ),
          )
      : []),
    ...floor.utilities.findings
      .filter(({ utility }) => utility === trade)
      .map((finding) =>
        rowOf(
          finding,
          placeOf(finding, floor, paper),
          fixOf(finding, floorTag, assessment.floors, remedies, paper),
          mark,
          paper,
        ),
      ),
  ];
  const pages = trades.map(
    (trade): TradePage => ({
      trade,
      ...(trade === 'power' ? { glance: powerGlance(floor, mark, paper) } : {}),
      rows: rowsOf(trade),
      notes: notesOf(floor, trade, paper),
      draws: trade === 'site' ? [] : drawsOf(floor, trade, mark, paper),
      questions: asked.filter((one) => tradeOf(one) === trade).map((one) => questionOf(one, floor, paper)),
    }),
  );
  const { builder } = book.about ?? {};
  return {
    floor: floor.name,
    ...(builder === undefined ? {} : { sendTo: builder }),
    pages: pages.filter(({ trade, questions }) => trade !== 'site' || questions.length > 0),
  };
};
