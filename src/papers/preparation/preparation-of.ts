import { type Book, tagsOf, valueAt } from '../../book/index.ts';
import type { Assessment, Figure, Finding, FloorAssessment, Remedy } from '../../floor/assessment.ts';
import { barShape } from '../../floor/bar-shape.ts';
import { type OpenQuestion, openQuestions } from '../../floor/questions/index.ts';
import type { Utility, UtilityFinding } from '../../floor/utilities/utility-finding.ts';
import { unitNamed } from '../../quantity/convert.ts';
import { utilityName } from '../../text/words/utility-name.ts';
import type { PaperWords } from '../paper-words.ts';
import { marginText } from '../prediction/spine.ts';
import {
  type Preparation,
  type PreparationDraw,
  type PreparationQuestion,
  type PreparationRow,
  type Trade,
  type TradePage,
  trades,
} from './preparation-content.ts';

/** What the plumber brings for the product, among the findings of the floor itself. */
const ofSupply: readonly string[] = ['manifoldPressure', 'makeUp', 'tankLevel', 'tankVolume', 'surge'];

/** The findings of a floor that a trade has to answer for. */
export const findingsOfTrades = ({ findings, utilities }: FloorAssessment): readonly Finding[] => [
  ...findings.filter(({ id }) => ofSupply.includes(id)),
  ...utilities.findings,
];

/** Name of the thing that has a tag, the tag where it has none. */
const nameOf = (book: Book, tag: string): string => {
  const place = tagsOf(book).find((one) => one.tag === tag);
  const name = place === undefined ? undefined : valueAt(book, `${place.path}/name`);
  return typeof name === 'string' ? name : tag;
};

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

const figureText = ({ value, kind }: Figure, paper: PaperWords): string =>
  value === undefined ? paper.say('paper.unknown') : paper.utility(value, kind);

/** What is asked; nothing where it is no number and the words beside it say it. */
const askedText = ({ demand, verdict }: Finding, paper: PaperWords): string =>
  demand.value === undefined && demand.missing.length === 0 && verdict !== 'unknown'
    ? ''
    : figureText(demand, paper);

const verdictText = (
  { demand, have, sense, verdict }: Finding,
  said: UtilityFinding['said'],
  paper: PaperWords,
): string => {
  const asked =
    said?.demand ?? (demand.value === undefined ? undefined : paper.utility(demand.value, demand.kind));
  if (verdict !== 'unknown') {
    return asked === undefined
      ? paper.say(`verdict.${verdict}`)
      : paper.say(`verdict.${sense}.${verdict}`, { demand: asked });
  }
  if (asked === undefined) return paper.say('verdict.unknown');
  if (have.value === undefined) return paper.say('verdict.unknown.demand', { demand: asked });
  return paper.say(sense === 'most' ? 'verdict.straddles.most' : 'verdict.straddles', { demand: asked });
};

const marksOf = (finding: Finding & Partial<UtilityFinding>, paper: PaperWords): readonly string[] => {
  const assumed = [...new Set([...finding.demand.assumed, ...finding.have.assumed])].map(paper.place);
  const refused = [...new Set((finding.refusals ?? []).flatMap(({ places }) => places))].map(paper.place);
  return [
    ...(assumed.length === 0 ? [] : [paper.say('preparation.assumed', { places: assumed.join(', ') })]),
    ...(refused.length === 0 ? [] : [paper.say('preparation.refused', { places: refused.join(', ') })]),
  ];
};

/** The remedy that breaks least, where one was looked for and found. */
const fixOf = (
  id: string,
  floor: string,
  remedies: readonly Remedy[],
  paper: PaperWords,
): string | undefined => {
  const [best] = remedies
    .filter((one) => one.floor === floor && one.finding === id && one.changes.length > 0)
    .toSorted((a, b) => a.breaks.length - b.breaks.length);
  if (best === undefined) return undefined;
  const fix = best.changes
    .map(({ lever, text }) => `${paper.sayOr(`lever.${lever}`, lever)} ${text}`)
    .reduce((first, second) => paper.say('prediction.remedy.pair', { first, second }));
  return paper.say('preparation.fix', { fix });
};

/** A figure, a word, or the figure with the place where it was found: `1.27 m, door of the filling room`. */
const hasText = ({ have, said }: Finding & Partial<UtilityFinding>, paper: PaperWords): string => {
  if (said?.have === undefined) return figureText(have, paper);
  return have.value === undefined
    ? said.have
    : paper.say('utility.of', { name: figureText(have, paper), of: said.have });
};

const rowOf = (
  finding: Finding & Partial<UtilityFinding>,
  what: string,
  tieIn: PreparationRow['tieIn'],
  fix: string | undefined,
  paper: PaperWords,
): PreparationRow => {
  const { demand, said, sense, verdict, question } = finding;
  const margin = marginText(finding, paper);
  const drawn = demand.value !== undefined && demand.value > 0 && demand.kind !== 'temperature';
  return {
    tieIn,
    what,
    demand: said?.demand ?? askedText(finding, paper),
    has: hasText(finding, paper),
    ...(question === undefined
      ? {}
      : { asks: paper.say(`utility.asks.${question}`), gives: paper.say(`utility.has.${question}`) }),
    ifSaid: finding.ifSaid,
    verdict,
    said: verdictText(finding, said, paper),
    marks: marksOf(finding, paper),
    // a share of an absolute temperature tells a person nothing
    ...(margin === undefined || demand.kind === 'temperature' ? {} : { margin }),
    ...(fix === undefined ? {} : { fix }),
    ...(drawn ? { bar: { ...barShape(finding), most: sense === 'most' } } : {}),
  };
};

const drawsOf = (
  { utilities }: FloorAssessment,
  utility: Utility,
  paper: PaperWords,
): readonly PreparationDraw[] =>
  utilities.figures
    .filter((one) => one.utility === utility && one.figure.value !== undefined)
    .map(({ id, of, figure }) => ({
      name: utilityName(
        paper.say,
        `utility.figure.${id}`,
        of === undefined ? undefined : nameOf(paper.book, of),
      ),
      value: figureText(figure, paper),
      marks: figure.assumed.length === 0 ? [] : [paper.say('paper.assumed')],
    }));

/** Who of the site answers: the trade whose finding waits, else the one whose part of the floor it is. */
const tradeOf = ({ path, utility }: OpenQuestion): Trade => {
  if (utility !== undefined) return utility;
  const part = /^\/floors\/\d+\/([^/]+)/.exec(path)?.[1] ?? '';
  if (part === 'supply') return 'water';
  return trades.find((trade) => trade === part) ?? 'site';
};

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

const findingName = (id: string, floor: FloorAssessment, paper: PaperWords): string => {
  const found = floor.utilities.findings.find((one) => one.id === id);
  if (found === undefined) return paper.name(id);
  const of = found.of === undefined ? undefined : nameOf(paper.book, found.of);
  return utilityName(paper.say, `utility.question.${found.question}`, of);
};

const questionOf = (asked: OpenQuestion, floor: FloorAssessment, paper: PaperWords): PreparationQuestion => {
  const { path, kind, unit, choices, why } = asked;
  const place = paper.place(path).replace(`${floor.name}, `, '');
  const findings = asked.findings.map((id) => findingName(id, floor, paper)).join('; ');
  const label = kind === undefined || unit === undefined ? undefined : unitNamed(kind, unit).label;
  return {
    text:
      choices === undefined
        ? capital(place)
        : paper.say('preparation.oneOf', { question: capital(place), choices: choices.join(', ') }),
    place: path,
    ...(label === undefined || label === '' ? {} : { unit: label }),
    ...(findings === ''
      ? {}
      : { why: paper.say(why === 'assumed' ? 'preparation.why.assumed' : 'preparation.why', { findings }) }),
  };
};

/** What the trades bring to one floor and what they are asked, from its assessment. */
export const preparationOf = (
  assessment: Assessment,
  floorTag: string,
  remedies: readonly Remedy[],
  paper: PaperWords,
): Preparation => {
  const { book, say } = paper;
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
              paper.name(finding.id),
              tieInOf(product, say('preparation.product'), paper),
              fixOf(finding.id, floorTag, remedies, paper),
              paper,
            ),
          )
      : []),
    ...floor.utilities.findings
      .filter(({ utility }) => utility === trade)
      .map((finding) =>
        rowOf(
          finding,
          findingName(finding.id, floor, paper),
          tieInOf(finding.tieIn, say(`utility.${finding.utility}`), paper),
          fixOf(finding.id, floorTag, remedies, paper),
          paper,
        ),
      ),
  ];
  const pages = trades.map(
    (trade): TradePage => ({
      trade,
      rows: rowsOf(trade),
      notes: notesOf(floor, trade, paper),
      draws: trade === 'site' ? [] : drawsOf(floor, trade, paper),
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
