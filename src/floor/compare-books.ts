import { type Book, type BookChange, bookChanges, tryPatches } from '../book/index.ts';
import type { Kind } from '../quantity/kinds.ts';
import type { Verdict } from './assessment.ts';
import { bookReader } from './book-reader.ts';
import { type FigureId, type FigureValues, figureKinds } from './figure-values.ts';
import { judgeFloor } from './judge-floor.ts';

/** A figure that is another in the second book. */
export interface FigureMove {
  readonly id: FigureId;
  readonly kind: Kind;
  readonly from?: number;
  readonly to?: number;
  /** What each change of the book does to it on its own, the largest first; absent where it alone makes it unknown. */
  readonly causes: readonly { readonly path: string; readonly effect?: number }[];
}

export interface FindingMove {
  readonly id: string;
  readonly from?: Verdict;
  readonly to?: Verdict;
}

export interface FloorMoves {
  /** Tag of the floor. */
  readonly floor: string;
  readonly figures: readonly FigureMove[];
  readonly findings: readonly FindingMove[];
}

export interface BookComparison {
  readonly changes: readonly BookChange[];
  readonly floors: readonly FloorMoves[];
}

/** A figure that moves by less than this share of itself has not moved. */
const still = 1e-9;
/** Changes that are tried one by one; a book that differs in more is another book. */
const mostTried = 40;

const moved = (from: number | undefined, to: number | undefined): boolean =>
  from === undefined || to === undefined
    ? from !== to
    : Math.abs(to - from) > still * Math.max(Math.abs(from), Math.abs(to));

/**
 * What is another in a second book, and why.
 *
 * Method   both books are judged; each change of the book is then put alone onto the first and judged again: what it
 *          does on its own is its effect
 * Returns  changes of the book, and for each floor that both have the figures and verdicts that moved
 * Assumes  effects that add up only roughly are told as they are; more than forty changes are not tried one by one
 * Cost     one judgement a floor and change
 */
export const compareBooks = (
  from: Book,
  to: Book,
  { format }: { readonly format?: string } = {},
): BookComparison => {
  const changes = bookChanges(from, to);
  const judged = (book: Book, tag: string) => {
    const floor = (book.floors ?? []).findIndex((each) => each.tag === tag);
    return floor < 0 ? undefined : judgeFloor(bookReader(book), floor, format);
  };
  const tags = (from.floors ?? []).map((floor) => floor.tag);
  const alone =
    changes.length > mostTried
      ? []
      : changes.map((change) => ({
          path: change.path,
          book: tryPatches(from, [{ path: change.path, value: change.to }]),
        }));
  return {
    changes,
    floors: tags.flatMap((tag): readonly FloorMoves[] => {
      const before = judged(from, tag);
      const after = judged(to, tag);
      if (before === undefined || after === undefined) return [];
      const each = alone.map(({ path, book }) => ({ path, values: judged(book, tag)?.values ?? {} }));
      const causesOf = (id: FigureId): FigureMove['causes'] =>
        each
          .filter(({ values }: { values: FigureValues }) => moved(before.values[id], values[id]))
          .map(({ path, values }: { path: string; values: FigureValues }) => {
            const [was, is] = [before.values[id], values[id]];
            return { path, ...(was === undefined || is === undefined ? {} : { effect: is - was }) };
          })
          .sort((a, b) => Math.abs(b.effect ?? 0) - Math.abs(a.effect ?? 0));
      return [
        {
          floor: tag,
          figures: (Object.keys(figureKinds) as FigureId[])
            .filter((id) => moved(before.values[id], after.values[id]))
            .map((id) => ({
              id,
              kind: figureKinds[id],
              causes: causesOf(id),
              ...(before.values[id] === undefined ? {} : { from: before.values[id] }),
              ...(after.values[id] === undefined ? {} : { to: after.values[id] }),
            })),
          findings: [...new Set([...before.findings, ...after.findings].map(({ id }) => id))].flatMap(
            (id) => {
              const was = before.findings.find((finding) => finding.id === id)?.verdict;
              const is = after.findings.find((finding) => finding.id === id)?.verdict;
              return was === is
                ? []
                : [
                    {
                      id,
                      ...(was === undefined ? {} : { from: was }),
                      ...(is === undefined ? {} : { to: is }),
                    },
                  ];
            },
          ),
        },
      ];
    }),
  };
};
