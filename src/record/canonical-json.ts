import { accept, type Problem, type Result, refuse } from '../quantity/problem.ts';
import { recordProblem } from './problems.ts';

/** Deep enough for any record, shallow enough that no input, however made, exhausts the stack. */
export const DEEPEST = 128;

// an object from another realm (a frame, a worker's test harness) has another Object.prototype
const isPlain = (value: object): boolean => {
  const prototype: unknown = Object.getPrototypeOf(value);
  return prototype === null || Object.getPrototypeOf(prototype) === null;
};

const nameOf = (value: unknown): string =>
  typeof value === 'object' ? Object.prototype.toString.call(value) : String(value);

/**
 * The one canonical text of a JSON value: members sorted by UTF-16 code units, no white space,
 * numbers and escapes as ECMAScript prints them.
 *
 * Method   RFC 8785; stricter where ECMAScript would stay silent: what JSON cannot hold is refused, not dropped
 * Symbols  value  any value
 * Returns  text
 * Problems RECORD_NOT_JSON, RECORD_TEXT_BROKEN, RECORD_TOO_DEEP (each with the path into the value)
 * Assumes  nothing about the value; cycles end at the deepest level allowed
 * Cost     O(n log n) in the members of the widest object
 * Source   RFC 8785 (June 2020), 3.2 (examples read in a public transcription)
 */
export const canonicalJson = (value: unknown, path = ''): Result<string> => {
  const problems: Problem[] = [];

  const text = (given: string, at: string): string => {
    if (/\p{Surrogate}/u.test(given)) problems.push(recordProblem('RECORD_TEXT_BROKEN', at));
    return JSON.stringify(given);
  };

  const refused = (given: unknown, at: string): string => {
    const allowed = 'text, finite number, true, false, null, list, plain object';
    problems.push(recordProblem('RECORD_NOT_JSON', at, { given: nameOf(given), allowed }));
    return 'null';
  };

  const write = (given: unknown, at: string, depth: number): string => {
    if (given === null || given === true || given === false) return String(given);
    if (typeof given === 'string') return text(given, at);
    // JSON.stringify prints numbers by ECMAScript's Number::toString, which RFC 8785 prescribes, and -0 as 0
    if (typeof given === 'number') return Number.isFinite(given) ? JSON.stringify(given) : refused(given, at);
    if (typeof given !== 'object') return refused(typeof given, at);
    if (depth === DEEPEST) {
      problems.push(recordProblem('RECORD_TOO_DEEP', at, { allowed: String(DEEPEST) }));
      return 'null';
    }
    if (Array.isArray(given)) {
      const parts: string[] = [];
      // by index, since map and forEach skip the holes of a sparse list
      for (let i = 0; i < given.length; i++) parts.push(write(given[i], `${at}/${i}`, depth + 1));
      return `[${parts.join(',')}]`;
    }
    if (!isPlain(given)) return refused(given, at);
    const members = given as Readonly<Record<string, unknown>>;
    // the default order of sort() is by UTF-16 code units, as 3.2.3 asks
    const parts = Object.keys(members)
      .sort()
      .map((key) => {
        const below = `${at}/${key.replaceAll('~', '~0').replaceAll('/', '~1')}`;
        return `${text(key, below)}:${write(members[key], below, depth + 1)}`;
      });
    return `{${parts.join(',')}}`;
  };

  const written = write(value, path, 0);
  return problems.length === 0 ? accept(written) : refuse(...problems);
};
