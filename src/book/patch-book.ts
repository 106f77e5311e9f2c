import { accept, type Problem, type Result, refuse } from '../quantity/problem.ts';
import type { Book } from './book.ts';
import { placeInList, pointerOf, stepsOf } from './pointer.ts';
import { problemOf } from './problem-of.ts';
import { quantityPutProblems } from './quantity-problems.ts';
import { readBook } from './read-book.ts';
import { valueAt } from './value-at.ts';

/** One change of a book. */
export interface Patch {
  /** JSON Pointer by index; `-` stands for the end of a list. */
  readonly path: string;
  /** What is to stand there; undefined takes away what does. */
  readonly value?: unknown;
  /** `insert` moves the rest of a list on; absent or `put`: what stands there is replaced. */
  readonly op?: 'put' | 'insert' | 'remove';
}

const nowhere = Symbol('a place that the book does not have');

const inList = (list: readonly unknown[], step: string, rest: readonly string[], patch: Patch): unknown => {
  const index = step === '-' ? list.length : placeInList(step);
  if (index === undefined || index > list.length) return nowhere;
  if (rest.length > 0) {
    const inner = applied(list[index], rest, patch);
    // one that is not there yet is put behind the last
    return inner === nowhere || (inner === undefined && index === list.length)
      ? nowhere
      : list.toSpliced(index, 1, inner);
  }
  if (patch.op === 'remove' || patch.value === undefined) {
    return index < list.length ? list.toSpliced(index, 1) : nowhere;
  }
  return list.toSpliced(index, patch.op === 'insert' ? 0 : 1, patch.value);
};

/** The data with one change; all that it does not touch is shared. */
const applied = (data: unknown, [step, ...rest]: readonly string[], patch: Patch): unknown => {
  if (step === undefined) return patch.value;
  const removes = patch.op === 'remove' || patch.value === undefined;
  // what is not there yet is made on the way to it
  const at = data === undefined && !removes ? (step === '0' || step === '-' ? [] : {}) : data;
  if (Array.isArray(at)) return inList(at, step, rest, patch);
  if (at === undefined) return undefined;
  if (typeof at !== 'object' || at === null) return nowhere;
  const part = at as Readonly<Record<string, unknown>>;
  const has = Object.hasOwn(part, step);
  if (rest.length === 0 && removes) {
    return has ? Object.fromEntries(Object.entries(part).filter(([key]) => key !== step)) : part;
  }
  if (!has && removes) return part;
  const inner = rest.length === 0 ? patch.value : applied(has ? part[step] : undefined, rest, patch);
  if (inner === nowhere) return nowhere;
  return inner === part[step] ? part : { ...part, [step]: inner };
};

/**
 * The book with some changes, not read anew: for a search that tries many values of which one is written.
 * What the changes would break is not looked at; `patchBook` does.
 */
export const tryPatches = (book: Book, patches: readonly Patch[]): Book => {
  let data: unknown = book;
  for (const patch of patches) {
    const next = applied(data, stepsOf(patch.path), patch);
    if (next !== nowhere) data = next;
  }
  return data as Book;
};

/** Longer than any quantity: what a text longer than that makes of the book is looked at as a whole. */
const longestText = 200;

/** Problems of texts put for quantities in parts of the book; undefined where any of the changes is anything else. */
const problemsOfTexts = (
  book: Book,
  data: unknown,
  patches: readonly Patch[],
): readonly Problem[] | undefined => {
  const problems: Problem[] = [];
  for (const { path, value, op } of patches) {
    if (op === 'insert' || op === 'remove') return undefined;
    if (typeof value !== 'string' || value.length > longestText) return undefined;
    const steps = stepsOf(path);
    // a part that was made on the way to it may stand where none can
    if (typeof valueAt(book, pointerOf(steps.slice(0, -1))) !== 'object') return undefined;
    const ofText = quantityPutProblems(data, steps);
    if (ofText === undefined) return undefined;
    problems.push(...ofText);
  }
  // two in one part may tell of it twice
  return patches.length > 1 && problems.length > 0 ? undefined : problems;
};

/**
 * A book with some changes, read anew as a whole: a change that would break it anywhere is refused with what it
 * breaks. The given book stays as it was, and the parts that no change touches are shared.
 *
 * Symbols  book  the book;  patches  changes in order, each at a place of the book as the ones before left it
 * Problems BOOK_PLACE_UNKNOWN and those of `readBook`
 * Assumes  the book has been read
 * Cost     O(size of the book); of the parts that they stand in for texts put for quantities, as a key in a field does
 */
export const patchBook = (book: Book, patches: readonly Patch[]): Result<Book> => {
  const problems: Problem[] = [];
  let data: unknown = book;
  for (const patch of patches) {
    const steps = stepsOf(patch.path);
    const next = applied(data, steps, patch);
    if (next === nowhere) problems.push(problemOf('BOOK_PLACE_UNKNOWN', steps, { given: pointerOf(steps) }));
    else data = next;
  }
  if (problems.length > 0) return refuse(...problems);
  const ofTexts = problemsOfTexts(book, data, patches);
  if (ofTexts === undefined) return readBook(data);
  return ofTexts.length > 0 ? refuse(...ofTexts) : accept(data as Book);
};
