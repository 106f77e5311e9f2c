import { accept, type Problem, type Result, refuse } from '../quantity/problem.ts';
import type { Book } from './book.ts';
import { readJsonText } from './json-text.ts';
import { migrated } from './migrations/index.ts';
import { orderProblems } from './order-problems.ts';
import { largest, plainDataProblems } from './plain-data.ts';
import { problemOf, shown } from './problem-of.ts';
import { quantityProblems } from './quantity-problems.ts';
import { bookVersion } from './schema/book.ts';
import { settingProblems } from './setting-problems.ts';
import { shapeProblems } from './shape-problems.ts';
import { tagProblems } from './tag-problems.ts';

/** Size of a text in bytes of UTF-8; one that is surely too large is not counted out. */
const bytesOf = (text: string): number =>
  text.length > largest
    ? text.length
    : text.length * 3 <= largest
      ? text.length
      : new TextEncoder().encode(text).length;

const dataOf = (given: unknown): Result<unknown> => {
  if (typeof given !== 'string') return accept(given);
  const bytes = bytesOf(given);
  if (bytes > largest) {
    return refuse(problemOf('BOOK_TOO_LARGE', [], { given: String(bytes), allowed: String(largest) }));
  }
  // a byte order mark is left by some editors and is no part of the text
  return readJsonText(given.startsWith('\ufeff') ? given.slice(1) : given);
};

/** A book of today's version out of data of any version, or why that cannot be. */
const ofThisVersion = (data: unknown): Result<unknown> => {
  const isPart = typeof data === 'object' && data !== null && !Array.isArray(data);
  const version =
    isPart && Object.hasOwn(data, 'twinfloor') ? (data as { twinfloor: unknown }).twinfloor : undefined;
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 0) {
    const given = isPart ? shown(version) : shown(data);
    return refuse(
      problemOf('BOOK_NOT_A_BOOK', isPart ? ['twinfloor'] : [], { given, allowed: String(bookVersion) }),
    );
  }
  if (version > bookVersion) {
    const more = { given: String(version), allowed: String(bookVersion) };
    return refuse(problemOf('BOOK_FROM_FUTURE', ['twinfloor'], more));
  }
  return accept(
    version === bookVersion ? data : migrated(data as Readonly<Record<string, unknown>>, version),
  );
};

/** More problems than a person can mend from one list; a last one says how many were left out. */
const most = 1000;

/** Everything that keeps data of today's version from being a book. */
const problemsIn = (data: unknown): readonly Problem[] => {
  const problems = [
    ...shapeProblems(data),
    ...quantityProblems(data),
    ...tagProblems(data),
    ...orderProblems(data),
    ...settingProblems(data),
  ];
  if (problems.length <= most) return problems;
  const further = problemOf('BOOK_FURTHER_PROBLEMS', [], { given: String(problems.length - most) });
  return [...problems.slice(0, most), further];
};

/**
 * Reads a book from its text, or checks data that may be one. Nothing is changed: quantities stay the text that
 * they were, keys keep their order, and what is not known stays absent.
 *
 * Symbols  given  the text of a book, or data
 * Returns  the book, or every problem at once with its path; a text that is no JSON, is too large or comes from a
 *          later version has that one problem alone
 * Problems those of `problems.ts` and of the quantities
 * Cost     O(size)
 */
export const readBook = (given: unknown): Result<Book> => {
  const data = dataOf(given);
  if (!data.ok) return data;
  const foreign = plainDataProblems(data.value);
  if (foreign.length > 0) return refuse(...foreign);
  const current = ofThisVersion(data.value);
  if (!current.ok) return current;
  const problems = problemsIn(current.value);
  return problems.length > 0 ? refuse(...problems) : accept(current.value as Book);
};
