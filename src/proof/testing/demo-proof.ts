import { readFileSync } from 'node:fs';
import { type Book, type Patch, patchBook, readBook } from '../../book/index.ts';
import { assessBook } from '../../floor/index.ts';
import { appendRecord, startChain } from '../../record/append-record.ts';
import type { Envelope } from '../../record/envelope.ts';
import { placesOfBook } from '../book-places.ts';
import type { PlannedCheck } from '../plan.ts';
import { type BookProof, type FloorProof, proofOfBook } from '../proof-of-book.ts';
import { type ProvedCheck, restsOn } from '../proved-check.ts';

const read = readBook(readFileSync('src/book/demo/flagon-line.json', 'utf8'));
if (!read.ok) throw new Error('the demo book does not read');

/** The demonstration book. */
export const demo: Book = read.value;

/** The demonstration book with other values. */
export const demoWith = (...patches: readonly Patch[]): Book => {
  const patched = patchBook(demo, patches);
  if (!patched.ok) throw new Error(JSON.stringify(patched.problems));
  return patched.value;
};

const demoAssessment = assessBook(demo);

/** What one record says. */
export interface Said {
  readonly kind: string;
  readonly version: number;
  readonly body: unknown;
  readonly at?: string;
  readonly supersedes?: string;
}

/** A chain of records of one tablet, `r0`, `r1` and so on; each a minute after the one before unless it says when. */
export const recorded = (said: readonly Said[]): readonly Envelope[] => {
  let chain = startChain('flagon-line', 'tablet');
  return said.map(({ kind, version, body, at, supersedes }, i) => {
    const done = appendRecord(chain, {
      id: `r${i}`,
      revision: 1,
      kind,
      version,
      deviceTime: at ?? `2027-03-08T09:${String(i % 60).padStart(2, '0')}:00Z`,
      ...(supersedes === undefined ? {} : { supersedes }),
      body,
    });
    if (!done.ok) throw new Error(JSON.stringify(done.problems));
    chain = done.value.chain;
    return done.value.record;
  });
};

/** The body of a try of a check over a book. */
export const triedOn = (book: Book, floor: string, check: PlannedCheck, more: object): Said => ({
  kind: 'check',
  version: 2,
  body: {
    check: check.id,
    floor,
    by: 'the engineer',
    basis: placesOfBook(book).basis(restsOn(check)),
    ...more,
  },
});

export const proofOf = (book: Book, records: readonly Envelope[] = []): BookProof =>
  proofOfBook(book, book === demo ? demoAssessment : assessBook(book), records);

export const floorOf = ({ floors }: BookProof, tag: string): FloorProof => {
  const found = floors.find(({ floor }) => floor === tag);
  if (found === undefined) throw new Error(`no floor ${tag}`);
  return found;
};

export const checkOf = (floor: FloorProof, id: string): ProvedCheck => {
  const found = floor.checks.find(({ check }) => check.id === id);
  if (found === undefined) throw new Error(`no check ${id}`);
  return found;
};
