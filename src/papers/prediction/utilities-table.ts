import type { FloorAssessment, Verdict } from '../../floor/assessment.ts';
import { type UtilityFinding, utilities } from '../../floor/utilities/utility-finding.ts';
import { askedText, findingName, hasText, marginText, utilityVerdictText } from '../finding-texts.ts';
import type { PaperWords } from '../paper-words.ts';
import type { Citations, Marks } from '../workings/citations.ts';
import { restsOnAssumed, type ShownFloor } from './spine.ts';

/** One question of a utility that is short or not known. */
export interface OpenUtility {
  readonly trade: string;
  readonly name: string;
  readonly asks: string;
  readonly asksMark: Marks;
  readonly has: string;
  readonly hasMark: Marks;
  readonly said: string;
  readonly is: Verdict;
}

/** How many questions of one trade come out how on one floor; a count of none is left out. */
export type TradeCount = Readonly<Partial<Record<Verdict, string>>>;

/** What the utilities of the floors come to: the trades by their counts, then one by one what is open. */
export interface UtilitiesPart {
  readonly floors: readonly { readonly name: string; readonly hue: number }[];
  readonly trades: readonly { readonly name: string; readonly cells: readonly (TradeCount | null)[] }[];
  readonly open: readonly {
    readonly hue: number;
    readonly title: string;
    readonly rows: readonly OpenUtility[];
  }[];
}

/** What is short first, then what is not known, then what carries. */
const order: readonly Verdict[] = ['short', 'unknown', 'carries'];

const countOf = (findings: readonly UtilityFinding[], { say }: PaperWords): TradeCount | null => {
  if (findings.length === 0) return null;
  const counts = order.map((verdict) => [verdict, findings.filter((one) => one.verdict === verdict).length]);
  return Object.fromEntries(
    counts
      .filter(([, n]) => n !== 0)
      .map(([verdict, n = 0]) => [verdict, say(`prediction.utilities.${verdict}`, { n })]),
  );
};

const openOf = (floor: FloorAssessment, citations: Citations, paper: PaperWords): readonly OpenUtility[] =>
  floor.utilities.findings
    .filter(({ verdict }) => verdict !== 'carries')
    .toSorted((a, b) => order.indexOf(a.verdict) - order.indexOf(b.verdict))
    .map((finding) => {
      const margin = marginText(finding, paper);
      const marks = `${finding.ifSaid ? '\u00a0*' : ''}${restsOnAssumed(finding) ? '\u00a0†' : ''}`;
      return {
        trade: paper.say(`utility.${finding.utility}`),
        name: findingName(finding.id, floor, paper),
        asks: askedText(finding, paper),
        asksMark: citations.mark(floor.floor, finding.demand.working),
        has: hasText(finding, paper),
        hasMark: citations.mark(floor.floor, finding.have.working),
        said: `${utilityVerdictText(finding, paper)}${margin === undefined ? '' : `, ${margin}`}${marks}`,
        is: finding.verdict,
      };
    });

export const utilitiesPart = (
  floors: readonly ShownFloor[],
  citations: Citations,
  paper: PaperWords,
): UtilitiesPart => ({
  floors: floors.map(({ floor, hue }) => ({ name: floor.name, hue })),
  trades: utilities
    .map((trade) => ({
      name: paper.say(`utility.${trade}`),
      cells: floors.map(({ floor }) =>
        countOf(
          floor.utilities.findings.filter(({ utility }) => utility === trade),
          paper,
        ),
      ),
    }))
    .filter(({ cells }) => cells.some((cell) => cell !== null)),
  open: floors
    .map(({ floor, hue }) => ({
      hue,
      title: paper.say('prediction.utilities.of', { floor: floor.name }),
      rows: openOf(floor, citations, paper),
    }))
    .filter(({ rows }) => rows.length > 0),
});
