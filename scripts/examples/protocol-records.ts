import type { Book } from '../../src/book/index.ts';
import { type Assessment, assessBook } from '../../src/floor/index.ts';
import {
  type FloorProof,
  type ProvedCheck,
  placesOfBook,
  proofOfBook,
  restsOn,
} from '../../src/proof/index.ts';
import { type Stage, stageOrder } from '../../src/proof/stage.ts';
import { appendRecord, type Chain, startChain } from '../../src/record/append-record.ts';
import type { Envelope } from '../../src/record/envelope.ts';
import { headsOf } from '../../src/record/heads.ts';
import { signStatement } from '../../src/record/signature.ts';

/** What somebody writes down at a moment; of a check the places that it rests on are added. */
export interface Told {
  readonly at: string;
  readonly kind: string;
  readonly version: number;
  readonly body: { readonly check?: string; readonly floor?: string } & Readonly<Record<string, unknown>>;
}

/** Who signs for a gate; what it lacks then is named. */
export interface Signing {
  readonly at: string;
  readonly sign: {
    readonly by: string;
    readonly role: string;
    readonly floor: string;
    readonly passes: string;
    readonly statement: string;
  };
}

/** At this moment the checks of a floor that want nothing but to be seen are gone through, one a minute. */
export interface Walk {
  readonly at: string;
  readonly walk: {
    readonly floor: string;
    readonly by: string;
    readonly witness: string;
    readonly last: string;
  };
}

export type Step = Told | Signing | Walk;

const id = 'flagon-line';
const revision = 3;
const witnessWriter = 'larkmoor-proof';

/** The secret halves of keys of people who do not exist: one byte, 32 times, as the README of the examples says. */
const keyBytes = new Map([
  ['the engineer', 17],
  ['the electrician', 34],
  ['the witness', 75],
]);

export const keyOf = (by: string): string => {
  const byte = keyBytes.get(by);
  if (byte === undefined) throw new Error(`${by} has no key`);
  return byte.toString(16).padStart(2, '0').repeat(32);
};

const later = (at: string, minutes: number): string =>
  new Date(Date.parse(at) + minutes * 60_000).toISOString().replace('.000Z', 'Z');

/** What is only seen: nothing is read off, and no condition but what somebody says yes to. */
const isOnlySeen = ({ check, state }: ProvedCheck): boolean =>
  state === 'open' &&
  check.limits.length === 0 &&
  check.late === undefined &&
  check.under.every(({ read }) => read === 'claim');

/**
 * The records that a story makes over a book as it stands now: when the book changes, its examples are made anew.
 *
 * Method   each step is told in the order of its moment; a walk takes the open checks of its floor in the order of the
 *          protocol, up to the last stage that it names; a signature names whatever its gate lacks then
 */
export const protocolRecords = (book: Book, story: readonly Step[]): readonly Envelope[] => {
  const assessment: Assessment = assessBook(book);
  const places = placesOfBook(book);
  const records: Envelope[] = [];
  const chains = new Map<string, Chain>();
  const append = (writer: string, at: string, kind: string, version: number, body: unknown): void => {
    const chain = chains.get(writer) ?? startChain(id, writer);
    const draft = { id: `${writer}.${chain.length}`, revision, kind, version, deviceTime: at, body };
    const done = appendRecord(chain, draft);
    if (!done.ok) throw new Error(JSON.stringify({ body, problems: done.problems }));
    chains.set(writer, done.value.chain);
    records.push(done.value.record);
  };
  const floorNow = (tag: string): FloorProof => {
    const found = proofOfBook(book, assessment, records).floors.find(({ floor }) => floor === tag);
    if (found === undefined) throw new Error(`the book has no floor ${tag}`);
    return found;
  };
  const tried = (floor: FloorProof, check: string): ProvedCheck => {
    const found = floor.checks.find((one) => one.check.id === check);
    if (found === undefined) throw new Error(`${floor.floor} has no check ${check}`);
    return found;
  };
  const basis = ({ check }: ProvedCheck) => places.basis(restsOn(check));
  const planned = new Map<string, FloorProof>();
  const plannedOf = (floor: string): FloorProof => {
    const known = planned.get(floor) ?? floorNow(floor);
    planned.set(floor, known);
    return known;
  };
  for (const step of [...story].sort((a, b) => (a.at < b.at ? -1 : a.at > b.at ? 1 : 0))) {
    if ('walk' in step) {
      const { floor, by, witness, last } = step.walk;
      const seen = floorNow(floor).checks.filter(
        (one) => stageOrder(one.check.stage) <= stageOrder(last as Stage) && isOnlySeen(one),
      );
      for (const [i, one] of seen.entries()) {
        const { check } = one;
        append('proof-tablet', later(step.at, i), 'check', 2, {
          check: check.id,
          floor,
          by,
          seen: true,
          basis: basis(one),
          ...(check.under.length === 0
            ? {}
            : { conditions: check.under.map((condition) => ({ condition: condition.id, read: 'yes' })) }),
          ...(check.point === 'none' ? {} : { witness }),
        });
      }
    } else if ('sign' in step) {
      const { floor, passes } = step.sign;
      const gate = floorNow(floor).gates.find((one) => one.gate === passes);
      const open = (gate?.lacks ?? []).map((lack) => lack.id);
      const signed = signStatement({ ...step.sign, open, heads: headsOf(records) }, keyOf(step.sign.by));
      if (!signed.ok) throw new Error(JSON.stringify(signed.problems));
      const writer = step.sign.by === 'the electrician' ? witnessWriter : 'proof-tablet';
      append(writer, step.at, 'signature', 2, signed.value);
    } else {
      const { check, floor } = step.body;
      const whole =
        step.kind === 'check' && check !== undefined && floor !== undefined
          ? { ...step.body, basis: basis(tried(plannedOf(floor), check)) }
          : step.body;
      append('proof-tablet', step.at, step.kind, step.version, whole);
    }
  }
  return records;
};
