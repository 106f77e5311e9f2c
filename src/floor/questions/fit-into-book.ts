import { type Book, type Patch, patchBook, valueAt } from '../../book/index.ts';
import type { Problem } from '../../quantity/problem.ts';

/** A row that was understood, with what it would put into the book. */
export interface Candidate {
  readonly row: number;
  readonly patch: Patch;
}

const above = (path: string): string => path.slice(0, Math.max(path.lastIndexOf('/'), 0));

type Belongs = (problem: string, path: string, book: Book) => boolean;

/** How a problem may belong to the place of a row, the nearest first. */
const relations: readonly Belongs[] = [
  (problem, path) => problem === path || problem.startsWith(`${path}/`),
  // beside it, as in a pair out of order
  (problem, path) => problem !== '' && above(problem) === above(path),
  // in a part that is not in the book yet and that the row begins without all that it must have
  (problem, path, book) => {
    const part = above(problem);
    return (
      path.startsWith(`${problem}/`) || (valueAt(book, part) === undefined && path.startsWith(`${part}/`))
    );
  },
];

const breaks = (book: Book, candidates: readonly Candidate[]): readonly Problem[] => {
  const tried = patchBook(
    book,
    candidates.map(({ patch }) => patch),
  );
  return tried.ok ? [] : tried.problems;
};

const blamed = (
  book: Book,
  problems: readonly Problem[],
  candidates: readonly Candidate[],
): ReadonlyMap<Candidate, readonly Problem[]> => {
  for (const belongs of relations) {
    const found = candidates
      .map((each) => [each, problems.filter(({ path }) => belongs(path, each.patch.path, book))] as const)
      .filter(([, own]) => own.length > 0);
    if (found.length > 0) return new Map(found);
  }
  // a tag that others refer to is missed elsewhere: the first row after which the book breaks
  const first = candidates.findIndex((_, at) => breaks(book, candidates.slice(0, at + 1)).length > 0);
  return new Map(candidates.slice(first, first + 1).map((each) => [each, problems]));
};

export interface Fitting {
  readonly kept: readonly Candidate[];
  readonly refused: ReadonlyMap<number, readonly Problem[]>;
}

/**
 * Which rows the book takes together. All are put in at once, since one may lean on another; a row on which the book
 * has a problem is left out, and the rest is tried again, until what is left can be put in as one change.
 *
 * Cost     O(size of the book) for each time that a row is refused
 */
export const fitIntoBook = (book: Book, candidates: readonly Candidate[]): Fitting => {
  const refused = new Map<number, readonly Problem[]>();
  let kept = candidates;
  while (kept.length > 0) {
    const problems = breaks(book, kept);
    if (problems.length === 0) break;
    const at = blamed(book, problems, kept);
    for (const [{ row }, own] of at) refused.set(row, own);
    kept = kept.filter((each) => !at.has(each));
  }
  return { kept, refused };
};
