import { accept, type Problem, type Result, refuse } from '../quantity/problem.ts';
import { members, moment } from './body-shape.ts';
import { type Envelope, envelopeProblems } from './envelope.ts';
import { readingParts, recordKinds } from './kinds.ts';
import { recordProblem } from './problems.ts';
import { type RecordedReading, readingsOf } from './readings.ts';
import { importRecords } from './record-file.ts';
import { verifyRecords } from './verify-records.ts';

/** A reading as one writes it by hand: what the body of its record holds, and the moment. */
const written = members({ ...readingParts.needed, at: moment }, readingParts.optional);

const EXPECTED =
  'a JSON list of readings, each with floor, of, value, by and at, or a file of exported records';

/** Records in a plain list may be a choice of all: each is looked at alone. */
const fromRecords = (records: readonly unknown[]): Result<readonly RecordedReading[]> => {
  const problems = records.flatMap((record, i): readonly Problem[] => {
    const path = `/${i}`;
    const malformed = envelopeProblems(record, path);
    if (malformed.length > 0) return malformed;
    const { kind, version, body } = record as Envelope;
    return recordKinds.get(`${kind}/${version}`)?.body(body, `${path}/body`) ?? [];
  });
  return problems.length > 0 ? refuse(...problems) : accept(readingsOf(records as readonly Envelope[]));
};

const fromList = (list: readonly unknown[]): Result<readonly RecordedReading[]> => {
  const isRecord = (one: unknown): boolean => typeof one === 'object' && one !== null && 'body' in one;
  if (list.length > 0 && list.every(isRecord)) return fromRecords(list);
  const problems = list.flatMap((one, i) => written(one, `/${i}`));
  if (problems.length > 0) return refuse(...problems);
  return accept(list.map((one, i) => ({ ...(one as Omit<RecordedReading, 'id'>), id: `${i + 1}` })));
};

const fromFile = (text: string): Result<readonly RecordedReading[]> => {
  const file = importRecords(text);
  if (!file.ok) return file;
  const { book, heads, records } = file.value;
  const problems = verifyRecords(records, { book, heads, kinds: recordKinds });
  return problems.length > 0 ? refuse(...problems) : accept(readingsOf(records));
};

/**
 * The readings of a file: a JSON list that a person wrote, a JSON list of records, or a file of exported records.
 *
 * Returns  readings; those of records as they count now
 * Problems RECORD_READINGS_UNREADABLE, RECORD_BODY, those of importRecords and verifyRecords, all at once
 * Cost     O(n log n)
 */
export const readReadings = (text: string): Result<readonly RecordedReading[]> => {
  let given: unknown;
  try {
    given = JSON.parse(text.replace(/^\uFEFF/, ''));
  } catch {
    given = undefined;
  }
  if (Array.isArray(given)) return fromList(given);
  if (text.includes('"twinfloor-records"')) return fromFile(text);
  return refuse(recordProblem('RECORD_READINGS_UNREADABLE', '', { allowed: EXPECTED }));
};
