import type { Problem } from '../quantity/problem.ts';
import { recordProblem } from './problems.ts';
import { isTimestamp } from './timestamp.ts';

/** The one form of everything that was read, tried, made, checked, photographed or signed. Never edited. */
export interface Envelope<Body = unknown> {
  /** Unique in its book; given by the device, so that it exists before any server has seen it. */
  readonly id: string;
  readonly book: string;
  /** Revision of the book that the writer had before them. */
  readonly revision: number;
  readonly kind: string;
  /** Version of the kind's body. */
  readonly version: number;
  /** The device that wrote it; each writer has a chain of its own. */
  readonly writer: string;
  /** Place in the writer's chain, from 0. */
  readonly sequence: number;
  /** The device's own clock, RFC 3339: a claim, never used for order. */
  readonly deviceTime: string;
  /** Id of the record that this one replaces. */
  readonly supersedes?: string;
  readonly body: Body;
  /** Hash of the record before it in the same chain; 64 zeros for the first. */
  readonly previous: string;
  /** SHA-256 over the 32 bytes of `previous` and the canonical JSON of the envelope without `hash`. */
  readonly hash: string;
}

/** The last record of a writer's chain: what is exported, signed and given to the other party. */
export interface Head {
  readonly book: string;
  readonly writer: string;
  readonly sequence: number;
  readonly hash: string;
}

/** What stands before the first record of a chain: 32 zero bytes. */
export const ORIGIN = '0'.repeat(64);

const TOKEN = /^[A-Za-z0-9][A-Za-z0-9._:-]{0,127}$/;
const HASH = /^[0-9a-f]{64}$/;

/** Whether a text can name a book, a record or a writer: letters, digits and `. _ : -`, at most 128. */
export const isToken = (value: unknown): value is string => typeof value === 'string' && TOKEN.test(value);

/** Whether a text is a SHA-256 in lower-case hexadecimal. */
export const isHash = (value: unknown): value is string => typeof value === 'string' && HASH.test(value);

/** Whether a value is a whole number from 0 that a double holds exactly. */
export const isCount = (value: unknown): value is number =>
  Number.isSafeInteger(value) && (value as number) >= 0;

const A_TOKEN = 'letters, digits and . _ : - (1 to 128)';
const A_COUNT = 'whole number from 0';
const A_HASH = '64 lower-case hexadecimal digits';

interface Member {
  readonly fits: (value: unknown) => boolean;
  readonly allowed: string;
}

const MEMBERS: Readonly<Record<Exclude<keyof Envelope, 'supersedes'>, Member>> = {
  id: { fits: isToken, allowed: A_TOKEN },
  book: { fits: isToken, allowed: A_TOKEN },
  revision: { fits: isCount, allowed: A_COUNT },
  kind: { fits: isToken, allowed: A_TOKEN },
  version: { fits: isCount, allowed: A_COUNT },
  writer: { fits: isToken, allowed: A_TOKEN },
  sequence: { fits: isCount, allowed: A_COUNT },
  deviceTime: { fits: isTimestamp, allowed: 'date and time with offset, such as 2026-11-24T09:30:00Z' },
  body: { fits: (value) => value !== undefined, allowed: 'a JSON value' },
  previous: { fits: isHash, allowed: A_HASH },
  hash: { fits: isHash, allowed: A_HASH },
};

/** Everything that keeps a value from being an envelope; an empty list makes it one. */
export const envelopeProblems = (value: unknown, path: string): readonly Problem[] => {
  if (typeof value !== 'object' || value === null || Array.isArray(value)) {
    return [recordProblem('RECORD_MALFORMED', path, { given: typeof value, allowed: 'an object' })];
  }
  const given = value as Readonly<Record<string, unknown>>;
  const wrong: Problem[] = [];
  for (const [name, member] of Object.entries(MEMBERS)) {
    if (!(Object.hasOwn(given, name) && member.fits(given[name]))) {
      const rest = { given: given[name], allowed: member.allowed };
      wrong.push(recordProblem('RECORD_MALFORMED', `${path}/${name}`, rest));
    }
  }
  if (Object.hasOwn(given, 'supersedes') && !isToken(given.supersedes)) {
    const rest = { given: given.supersedes, allowed: A_TOKEN };
    wrong.push(recordProblem('RECORD_MALFORMED', `${path}/supersedes`, rest));
  }
  // a member that no version of the envelope has would travel unseen beside what people signed
  for (const name of Object.keys(given)) {
    if (name !== 'supersedes' && !Object.hasOwn(MEMBERS, name)) {
      const allowed = [...Object.keys(MEMBERS), 'supersedes'];
      wrong.push(recordProblem('RECORD_MALFORMED', `${path}/${name}`, { given: name, allowed }));
    }
  }
  return wrong;
};
