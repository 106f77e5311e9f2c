import { createHash } from 'node:crypto';
import type { Problem } from '../quantity/problem.ts';
import { isToken } from '../record/envelope.ts';
import { isTimestamp } from '../record/timestamp.ts';
import { storeProblem } from './problems.ts';
import type { Row, SqlValue } from './sqlite-driver.ts';
import type { NewBook, RevisionEntry } from './store.ts';

export const utf8 = new TextEncoder();
export const sha256 = (bytes: Uint8Array): string => createHash('sha256').update(bytes).digest('hex');

export const bytesOf = (value: SqlValue | undefined): Uint8Array =>
  value instanceof Uint8Array ? value : new Uint8Array();

export const entryOf = (row: Row): RevisionEntry => ({
  book: String(row.book),
  number: Number(row.number),
  sha256: String(row.sha256),
  author: String(row.author),
  ...(row.reason === null ? {} : { reason: String(row.reason) }),
  savedAt: String(row.saved_at),
  ...(row.based_on === null ? {} : { basedOn: Number(row.based_on) }),
});

/** Columns of a revision without its text. */
export const ENTRY = 'book, number, sha256, author, reason, saved_at, based_on';

/** A text that UTF-8 can hold, so that what comes back is what was given. NUL ends a text column's value. */
const fits = (value: unknown): boolean =>
  typeof value === 'string' && !/\p{Surrogate}/u.test(value) && !value.includes('\0');

/** What keeps a text from being saved as it was given, every fault at once. */
export const newBookProblems = (given: NewBook): readonly Problem[] => {
  const problems: Problem[] = [];
  const want = (good: boolean, path: string, value: unknown, allowed: string): void => {
    if (!good) problems.push(storeProblem('STORE_INPUT', path, { given: value, allowed }));
  };
  want(isToken(given.book), '/book', given.book, 'letters, digits and . _ : - (1 to 128)');
  // the text itself is not put into the problem: it may be large
  const whole = typeof given.text === 'string' && !/\p{Surrogate}/u.test(given.text);
  want(whole, '/text', typeof given.text, 'a text of whole characters');
  want(fits(given.author) && given.author.trim() !== '', '/author', given.author, 'a name');
  want(given.reason === undefined || fits(given.reason), '/reason', given.reason, 'a text');
  want(isTimestamp(given.at), '/at', given.at, 'date and time with offset, such as 2026-11-24T09:30:00Z');
  return problems;
};
