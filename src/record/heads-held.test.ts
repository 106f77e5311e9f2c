import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { accept } from '../quantity/problem.ts';
import type { Envelope } from './envelope.ts';
import { hashRecord } from './hash-record.ts';
import { headsOf } from './heads.ts';
import { headsHeld, type ReadOnward } from './heads-held.ts';
import { exportRecords, recordFilePieces } from './record-file.ts';
import { appended, testedBook } from './testing/appended.ts';
import { verifyRecords } from './verify-records.ts';

const writers = ['laptop', 'tablet'] as const;
const whole = Array.from({ length: 16 }, (_, i) => writers[i % 3 === 0 ? 0 : 1]).reduce(
  (all: readonly Envelope[], writer) =>
    appended(all, writer!, { body: { text: `seen ${all.length}`, by: 'rigger' } }),
  [],
);
const heads = headsOf(whole);

/** A set of records as it is read of a store, three at a time. */
const readingOf =
  (records: readonly Envelope[]): ReadOnward =>
  async (writer, behind) =>
    accept(
      records
        .filter((one) => one.writer === writer && one.sequence > behind)
        .sort((a, b) => a.sequence - b.sequence)
        .slice(0, 3),
    );

/** All that follows a record of a chain, hashed anew as one would who wants nobody to see a change. */
const rehashed = (records: readonly Envelope[], from: Envelope): readonly Envelope[] => {
  let previous = from.previous;
  return records.map((record) => {
    if (record.writer !== from.writer || record.sequence < from.sequence) return record;
    const next = { ...record, previous };
    const hash = hashRecord(next);
    if (!hash.ok) throw new Error('a record has no hash');
    previous = hash.value;
    return { ...next, hash: hash.value };
  });
};

const tamperings: Readonly<Record<string, (at: number) => readonly Envelope[]>> = {
  changed: (at) => whole.with(at, { ...whole[at]!, body: { text: 'never seen', by: 'rigger' } }),
  'changed and hashed anew': (at) => {
    const record = { ...whole[at]!, body: { text: 'never seen', by: 'rigger' } };
    return rehashed(whole.with(at, record), record);
  },
  dropped: (at) => whole.toSpliced(at, 1),
  'cut off': (at) =>
    whole.filter(({ writer, sequence }) => writer !== whole[at]!.writer || sequence < whole[at]!.sequence),
};

describe('heads that were handed over', () => {
  it('hold while everything up to them is as it was, whatever came behind', async () => {
    expect(await headsHeld(readingOf(whole), testedBook, heads)).toEqual([]);
    const more = appended(appended(whole, 'laptop', {}), 'phone', {});
    expect(await headsHeld(readingOf(more), testedBook, heads)).toEqual([]);
  });

  it('show every change, drop and cut before them, as those show who hold the whole set', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.constantFrom(...Object.keys(tamperings)),
        fc.nat(whole.length - 1),
        async (how, at) => {
          const records = tamperings[how]!(at);
          const codes = (await headsHeld(readingOf(records), testedBook, heads)).map(({ code }) => code);
          const all = verifyRecords(records, { book: testedBook, heads }).map(({ code }) => code);
          expect(codes.length).toBeGreaterThan(0);
          expect(all).toEqual(expect.arrayContaining(codes));
        },
      ),
    );
  });

  it('of another book hold nothing', async () => {
    const [problem] = await headsHeld(readingOf(whole), 'another', heads);
    expect(problem).toMatchObject({ code: 'RECORD_HEAD_OF_OTHER_BOOK', given: testedBook });
  });
});

it('a file of records is the same text, written as a whole or piece by piece', async () => {
  const later = appended(whole, 'tablet', {});
  const pieces: string[] = [];
  for await (const piece of recordFilePieces(testedBook, heads, readingOf(later))) pieces.push(piece);
  expect(pieces.length).toBeGreaterThan(4);
  expect(pieces.join('')).toBe(exportRecords(testedBook, whole));
});
