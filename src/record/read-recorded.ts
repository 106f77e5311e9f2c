import { accept, type Problem, type Result, refuse } from '../quantity/problem.ts';
import type { Shape } from './body-shape.ts';
import { type Envelope, envelopeProblems } from './envelope.ts';
import { recordKinds } from './kinds.ts';
import { recordProblem } from './problems.ts';
import { importRecords } from './record-file.ts';
import { verifyRecords } from './verify-records.ts';

/** What is looked for in a file. */
export interface Wanted<T> {
  /** One of them as a person writes it by hand: what the body of its record holds, and the moment. */
  readonly written: Shape;
  /** Those that count now, out of records. */
  readonly of: (records: readonly Envelope[]) => readonly T[];
  /** What the file should hold, for the sentence. */
  readonly expected: string;
}

/** Records in a plain list may be a choice of all: each is looked at alone. */
const fromRecords = <T>(records: readonly unknown[], { of }: Wanted<T>): Result<readonly T[]> => {
  const problems = records.flatMap((record, i): readonly Problem[] => {
    const path = `/${i}`;
    const malformed = envelopeProblems(record, path);
    if (malformed.length > 0) return malformed;
    const { kind, version, body } = record as Envelope;
    return recordKinds.get(`${kind}/${version}`)?.body(body, `${path}/body`) ?? [];
  });
  return problems.length > 0 ? refuse(...problems) : accept(of(records as readonly Envelope[]));
};

const isRecord = (one: unknown): boolean => typeof one === 'object' && one !== null && 'body' in one;

const fromList = <T>(list: readonly unknown[], wanted: Wanted<T>): Result<readonly T[]> => {
  if (list.length > 0 && list.every(isRecord)) return fromRecords(list, wanted);
  const problems = list.flatMap((one, i) => wanted.written(one, `/${i}`));
  if (problems.length > 0) return refuse(...problems);
  return accept(list.map((one, i) => ({ ...(one as Omit<T, 'id'>), id: `${i + 1}` }) as T));
};

const fromFile = <T>(text: string, { of }: Wanted<T>): Result<readonly T[]> => {
  const file = importRecords(text);
  if (!file.ok) return file;
  const { book, heads, records } = file.value;
  const problems = verifyRecords(records, { book, heads, kinds: recordKinds });
  return problems.length > 0 ? refuse(...problems) : accept(of(records));
};

/**
 * What a file holds of one kind: a JSON list that a person wrote, a JSON list of records, or a file of exported
 * records.
 *
 * Returns  those of records as they count now; those of a list in its order, with their number as id
 * Problems RECORD_LIST_UNREADABLE, RECORD_BODY, those of importRecords and verifyRecords, all at once
 * Cost     O(n log n)
 */
export const readRecorded = <T>(text: string, wanted: Wanted<T>): Result<readonly T[]> => {
  let given: unknown;
  try {
    given = JSON.parse(text.replace(/^\uFEFF/, ''));
  } catch {
    given = undefined;
  }
  if (Array.isArray(given)) return fromList(given, wanted);
  if (text.includes('"twinfloor-records"')) return fromFile(text, wanted);
  return refuse(recordProblem('RECORD_LIST_UNREADABLE', '', { allowed: wanted.expected }));
};
