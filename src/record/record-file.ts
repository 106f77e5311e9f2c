import { accept, type Problem, type Result, refuse } from '../quantity/problem.ts';
import { canonicalJson } from './canonical-json.ts';
import { type Envelope, envelopeProblems, type Head, isCount, isHash, isToken } from './envelope.ts';
import { headsOf } from './heads.ts';
import type { ReadOnward } from './heads-held.ts';
import { mergeRecords } from './merge-records.ts';
import { recordProblem } from './problems.ts';

/*
 * A file of records is text in UTF-8, one JSON value a line, each line canonical (RFC 8785), each ended by
 * a line feed:
 *
 *   {"book":"…","format":"twinfloor-records","heads":[{"book":…,"hash":…,"sequence":…,"writer":…}],"records":2,"version":1}
 *   {"body":…,"book":…, … one envelope … }
 *   {"body":…,"book":…, … }
 *
 * The first line names the book, how many records follow and the head of each writer's chain. Records
 * stand by writer, then sequence. Anyone can check it without this program: take an envelope's line, remove
 * its `hash` member, put the 32 bytes of `previous` before it; the SHA-256 of that is `hash`.
 */

const FORMAT = 'twinfloor-records';
const VERSION = 1;

export interface RecordFile {
  readonly book: string;
  readonly heads: readonly Head[];
  readonly records: readonly Envelope[];
}

/** One value of the file. */
const line = (value: unknown): string => {
  const text = canonicalJson(value);
  // an envelope was canonical when it was made or read; one that is not is a fault of the program
  if (!text.ok) throw new Error(`a record is not JSON: ${JSON.stringify(text.problems)}`);
  return `${text.value}\n`;
};

const headerLine = (book: string, records: number, heads: readonly Head[]): string =>
  line({ format: FORMAT, version: VERSION, book, records, heads });

/**
 * The text of a file of records, as described above.
 *
 * Method   header, then mergeRecords' order, so that equal sets give equal bytes
 * Symbols  book     whose records they are;  records  the set
 * Returns  text
 * Problems none
 * Assumes  the records were made by appendRecord or read by importRecords
 * Cost     O(n log n)
 * Source   RFC 8785 for each line
 */
export const exportRecords = (book: string, records: readonly Envelope[]): string => {
  const ordered = mergeRecords(records);
  return headerLine(book, ordered.length, headsOf(ordered)) + ordered.map(line).join('');
};

/**
 * The same text of a set that is too large to be held at once, a piece for each part of a chain that is read at once.
 *
 * Method   as exportRecords, of which it gives the very text; what comes behind the heads meanwhile is left out
 * Symbols  heads  of the set, by writer;  readOnward  reads a chain on
 * Problems throws where a chain ends before its head: records are never removed
 * Assumes  chains without gaps or forks, which holds for a store
 * Cost     O(n), memory of what is read at once
 */
export const recordFilePieces = async function* (
  book: string,
  heads: readonly Head[],
  readOnward: ReadOnward,
): AsyncGenerator<string> {
  // a chain without gaps is as long as the place of its end
  yield headerLine(
    book,
    heads.reduce((sum, { sequence }) => sum + sequence + 1, 0),
    heads,
  );
  for (const { writer, sequence } of heads) {
    for (let behind = -1; behind < sequence; ) {
      const read = await readOnward(writer, behind);
      if (!read.ok || read.value.length === 0)
        throw new Error(`the chain of ${writer} ends behind ${behind}`);
      const own = read.value.filter((record) => record.sequence <= sequence);
      yield own.map(line).join('');
      behind = own.at(-1)!.sequence;
    }
  }
};

const EXPECTED = `a first line with format ${FORMAT}, version, book, records and heads`;

const isHead = (value: unknown): value is Head => {
  if (typeof value !== 'object' || value === null) return false;
  const { book, writer, sequence, hash } = value as Partial<Head>;
  return (
    isToken(book) && isToken(writer) && isCount(sequence) && isHash(hash) && Object.keys(value).length === 4
  );
};

interface Header {
  readonly book: string;
  readonly records: number;
  readonly heads: readonly Head[];
}

const readLine = (text: string, number: number): Result<unknown> => {
  const path = `/lines/${number}`;
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch {
    return refuse(recordProblem('RECORD_LINE_UNREADABLE', path, { parts: { line: number } }));
  }
  // of two members of one name JSON.parse keeps the last and another reader the first: only the exact form passes
  const canonical = canonicalJson(value);
  return canonical.ok && canonical.value === text
    ? accept(value)
    : refuse(recordProblem('RECORD_LINE_NOT_CANONICAL', path, { parts: { line: number } }));
};

const readHeader = (text: string): Result<Header> => {
  const unreadable = refuse(recordProblem('RECORD_FILE_UNREADABLE', '/lines/1', { allowed: EXPECTED }));
  const read = readLine(text, 1);
  if (!read.ok || typeof read.value !== 'object' || read.value === null) return unreadable;
  const { format, version, book, records, heads, ...rest } = read.value as Readonly<Record<string, unknown>>;
  if (format !== FORMAT || !isCount(version) || version === 0) return unreadable;
  if (version > VERSION) {
    const problem = { given: version, allowed: String(VERSION) };
    return refuse(recordProblem('RECORD_FILE_FROM_FUTURE', '/lines/1/version', problem));
  }
  if (!isToken(book) || !isCount(records) || !Array.isArray(heads) || !heads.every(isHead)) return unreadable;
  return Object.keys(rest).length > 0 ? unreadable : accept({ book, records, heads });
};

/** The heads that an earlier export carried: its first line is enough, such as it was mailed or printed. */
export const importHeads = (
  text: string,
): Result<{ readonly book: string; readonly heads: readonly Head[] }> =>
  readHeader(text.replace(/^\uFEFF/, '').split(/\r?\n/, 1)[0] ?? '');

/**
 * Reads a file of records. Whether they are whole is said by
 * `verifyRecords(file.records, { book: file.book, heads: [...file.heads, ...headsKeptElsewhere] })`.
 *
 * Method   every line on its own, each problem with its line; carriage returns and a byte order mark that a
 *          mail program added are passed over, nothing else
 * Symbols  text  content of the file
 * Returns  book, heads, records in the file's order
 * Problems RECORD_FILE_UNREADABLE, RECORD_FILE_FROM_FUTURE, RECORD_FILE_SHORT, RECORD_LINE_UNREADABLE,
 *          RECORD_LINE_NOT_CANONICAL, RECORD_MALFORMED
 * Assumes  nothing about the text
 * Cost     O(n)
 * Source   the description above
 */
export const importRecords = (text: string): Result<RecordFile> => {
  const lines = text.replace(/^\uFEFF/, '').split(/\r?\n/);
  if (lines.at(-1) === '') lines.pop();
  const header = readHeader(lines[0] ?? '');
  if (!header.ok) return header;
  const problems: Problem[] = [];
  const records: Envelope[] = [];
  lines.slice(1).forEach((one, i) => {
    const number = i + 2;
    const read = readLine(one, number);
    const wrong = read.ok ? envelopeProblems(read.value, `/lines/${number}`) : read.problems;
    if (wrong.length > 0) problems.push(...wrong);
    else if (read.ok) records.push(read.value as Envelope);
  });
  if (lines.length - 1 !== header.value.records) {
    const rest = { given: lines.length - 1, allowed: String(header.value.records) };
    problems.push(recordProblem('RECORD_FILE_SHORT', '/lines/1/records', rest));
  }
  if (problems.length > 0) return refuse(...problems);
  return accept({ book: header.value.book, heads: header.value.heads, records });
};
