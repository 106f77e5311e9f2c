import { type Book, type Format, tagPath } from '../book/index.ts';
import type { Assessment, Figure, FloorAssessment, Verdict } from '../floor/assessment.ts';
import { ratePathOf } from '../floor/rate-path.ts';
import type { AnyFinding } from '../floor/utilities/utility-finding.ts';
import { figurePlaces } from './figure-places.ts';
import { demanded, type Limit } from './limit.ts';

/** One floor of a book with what the makers of checks look up in it. */
export interface ProofContext {
  readonly book: Book;
  /** The floor on which it is to be shown. */
  readonly here: FloorAssessment;
  readonly hereIndex: number;
  /** The floor that the line is bound for, whose figures the conditions are held against. */
  readonly site?: FloorAssessment;
  readonly siteIndex: number;
  readonly format?: Format;
  readonly formatPath: string;
  readonly ratePath: string;
  /** A finding of the floor here: of the main question or of a utility. */
  readonly finding: (id: string) => AnyFinding | undefined;
  /** What a finding asks, with everything that a check takes from it. */
  readonly asked: (finding: AnyFinding) => {
    readonly limits: readonly Limit[];
    readonly places: readonly string[];
    readonly missing: readonly string[];
    readonly foreseen: Verdict;
  };
  /** Places behind a figure of the floor that the line is bound for. */
  readonly sitePlaces: (figure: Figure) => readonly string[];
  /** Place of the thing with a tag. */
  readonly placeOf: (tag: string) => string | undefined;
}

/** What a floor of an assessed book is, for the makers of checks. */
export const proofContext = (book: Book, { floors, format }: Assessment, floor: string): ProofContext => {
  const hereIndex = floors.findIndex((one) => one.floor === floor);
  const here = floors[hereIndex];
  if (here === undefined) throw new Error(`the book has no floor ${floor}`);
  const siteIndex =
    here.role === 'bound for' ? hereIndex : floors.findIndex((one) => one.role === 'bound for');
  const site = floors[siteIndex];
  const formatIndex = (book.line?.formats ?? []).findIndex(({ tag }) => tag === format);
  const found = book.line?.formats?.[formatIndex];
  const formatPath = `/line/formats/${Math.max(0, formatIndex)}`;
  const findings = new Map<string, AnyFinding>(
    [...here.findings, ...here.utilities.findings].map((one) => [one.id, one]),
  );
  const paths = new Map<string, string | undefined>();
  return {
    book,
    here,
    hereIndex,
    siteIndex,
    formatPath,
    ratePath: ratePathOf(book, formatPath),
    ...(site === undefined ? {} : { site }),
    ...(found === undefined ? {} : { format: found }),
    finding: (id) => findings.get(id),
    asked: (finding) => ({
      limits: [demanded(finding, here.workings)],
      places: figurePlaces(finding.demand, here.workings, hereIndex, book),
      missing: finding.demand.value === undefined ? finding.demand.missing : [],
      foreseen: finding.verdict,
    }),
    sitePlaces: (figure) => (site === undefined ? [] : figurePlaces(figure, site.workings, siteIndex, book)),
    placeOf: (tag) => {
      if (!paths.has(tag)) paths.set(tag, tagPath(book, tag));
      return paths.get(tag);
    },
  };
};
