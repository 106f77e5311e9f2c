import { type Book, tagPath, valueAt } from '../book/index.ts';
import type { Figure, Finding, FloorAssessment } from '../floor/assessment.ts';
import type { UtilityFinding } from '../floor/utilities/utility-finding.ts';
import type { Kind } from '../quantity/index.ts';
import { utilityName } from '../text/words/utility-name.ts';
import { asWritten } from './as-written.ts';
import type { PaperWords } from './paper-words.ts';

/** A finding of the floor itself or of one of its utilities. */
export type AnyFinding = Finding & Partial<UtilityFinding>;

/** Name of the thing that has a tag, the tag where it has none. */
export const nameOf = (book: Book, tag: string): string => {
  const path = tagPath(book, tag);
  const name = path === undefined ? undefined : valueAt(book, `${path}/name`);
  return typeof name === 'string' ? name : tag;
};

/** Any finding or figure of a floor by the name that a mechanic says. */
export const findingName = (id: string, { utilities }: FloorAssessment, paper: PaperWords): string => {
  const found = utilities.findings.find((one) => one.id === id);
  if (found === undefined) return paper.name(id);
  const of = found.of === undefined ? undefined : nameOf(paper.book, found.of);
  return utilityName(paper.say, `utility.question.${found.question}`, of);
};

export const figureText = ({ value, kind }: Figure, paper: PaperWords): string =>
  value === undefined ? paper.say('paper.unknown') : paper.utility(value, kind);

/** What is asked; nothing where it is no number and the words beside it say it. */
export const askedText = ({ demand, said, verdict }: AnyFinding, paper: PaperWords): string => {
  if (said?.demand !== undefined) return asWritten(said.demand, paper);
  return demand.value === undefined && demand.missing.length === 0 && verdict !== 'unknown'
    ? ''
    : figureText(demand, paper);
};

/** A figure, a word, or the figure with the place where it was found: `1.27 m, door of the filling room`. */
export const hasText = ({ have, said }: AnyFinding, paper: PaperWords): string => {
  if (said?.have === undefined) return figureText(have, paper);
  return have.value === undefined
    ? said.have
    : paper.say('utility.of', { name: figureText(have, paper), of: said.have });
};

export const utilityVerdictText = (
  { demand, have, said, sense, verdict }: AnyFinding,
  paper: PaperWords,
): string => {
  const figure = demand.value === undefined ? undefined : paper.utility(demand.value, demand.kind);
  const asked = said?.demand === undefined ? figure : asWritten(said.demand, paper);
  if (verdict !== 'unknown') {
    return asked === undefined
      ? paper.say(`verdict.${verdict}`)
      : paper.say(`verdict.${sense}.${verdict}`, { demand: asked });
  }
  if (asked === undefined) return paper.say('verdict.unknown');
  if (have.value === undefined) return paper.say('verdict.unknown.demand', { demand: asked });
  return paper.say(sense === 'most' ? 'verdict.straddles.most' : 'verdict.straddles', { demand: asked });
};

/** Kinds whose zero is not nothing, with the kind of their differences: a share of them tells a person nothing. */
const differences: Partial<Record<Kind, Kind>> = {
  temperature: 'temperatureDifference',
  acidity: 'acidity',
};

export const marginText = (
  { demand, gap, margin, sense }: AnyFinding,
  { say, percent, utility }: PaperWords,
): string | undefined => {
  const difference = differences[demand.kind];
  if (difference !== undefined || margin === undefined || !Number.isFinite(margin)) {
    if (gap === undefined || !Number.isFinite(gap)) return undefined;
    const missing = { percent: utility(Math.abs(gap), difference ?? demand.kind) };
    return gap >= 0 ? say('paper.margin.over', missing) : say(`paper.margin.under.${sense}`, missing);
  }
  const share = { percent: percent(Math.abs(margin)) };
  if (margin > 9.99) return say('paper.margin.ample');
  return margin >= 0 ? say('paper.margin.over', share) : say(`paper.margin.under.${sense}`, share);
};
