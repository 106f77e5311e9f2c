import { existsSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { appendRecord, startChain } from '../record/append-record.ts';
import { openSqliteStore } from '../store/sqlite-store.ts';
import { archivedSchema } from './archive-document.ts';
import { called } from './testing/called.ts';

let folder = '';
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'cli-archive-'));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const call = (...argv: string[]) => called(['archive', ...argv]);
const save = async (data: string, author: string): Promise<void> => {
  const store = await openSqliteStore(join(folder, data, 'books.sqlite'));
  const at = '2027-03-01T07:00:00Z';
  const first = { book: 'b', text: '{"twinfloor":1}', author: 'engineer', at };
  await store.createBook(first);
  const text = JSON.stringify({ twinfloor: 1, about: { title: author } });
  if (author !== 'engineer') await store.appendRevision({ ...first, text, author, basedOn: 1 });
  await store.close();
};

/** A record of the data folder that a revision that is kept aside holds. */
const sayHolds = async (data: string, digest: string): Promise<void> => {
  const store = await openSqliteStore(join(folder, data, 'books.sqlite'));
  try {
    const all = await store.allRevisions('b');
    const over = all.ok && all.value.find((one) => one.number === 2 && one.sha256 !== digest)?.sha256;
    const body = { number: 2, holds: digest, over, why: 'it was measured', by: 'a colleague' };
    const said = appendRecord(startChain('b', 'laptop'), {
      id: 'laptop-0',
      revision: 2,
      kind: 'revision',
      version: 1,
      deviceTime: '2027-03-08T09:00:00.000Z',
      body,
    });
    if (!said.ok) throw new Error(JSON.stringify(said.problems));
    const added = await store.appendRecords('b', [said.value.record]);
    expect(added.ok).toBe(true);
  } finally {
    await store.close();
  }
};

describe('archive', () => {
  it('makes no store where it only looks for a book', async () => {
    const mistyped = join(folder, 'mistyped');
    const { status, err } = await call('b', '--out', join(folder, 'y.zip'), '--data', mistyped);
    expect([status, err]).toEqual([2, expect.stringContaining('No book is stored in')]);
    expect(existsSync(mistyped)).toBe(false);
  });

  it('takes a book from one data folder to another, and says what wants a person', async () => {
    await save('here', 'engineer');
    const file = join(folder, 'b.zip');
    const written = await call('b', '--out', file, '--data', join(folder, 'here'));
    expect([written.status, written.err]).toEqual([0, '']);
    expect(written.out).toContain('book b, 1 revision, no record, no file.');
    const taken = await call('--in', file, '--data', join(folder, 'there'));
    expect([taken.status, taken.err]).toEqual([0, '']);
    expect(taken.out).toContain('revisions: 1 new, 0 known, 0 kept aside');

    await save('here', 'the engineer');
    await save('there', 'a colleague');
    await call('b', '--out', file, '--data', join(folder, 'here'));
    const joined = await call('--in', file, '--data', join(folder, 'there'), '--json');
    expect(joined.status).toBe(1);
    const told = archivedSchema.parse(JSON.parse(joined.out));
    expect(told.in?.revisions).toEqual({ added: 0, aside: 1, known: 1 });
    expect(told.in?.told[0]?.text).toContain('saved by the engineer');
    expect(told.aside.map(({ number, author }) => [number, author])).toEqual([[2, 'the engineer']]);
    // it is said for as long as it is there, and by whoever looks into the archive
    const both = join(folder, 'both.zip');
    const again = await call('b', '--out', both, '--data', join(folder, 'there'));
    expect(again.out).toContain('Kept aside: revision 2 by the engineer');
    const { out } = await called(['verify', both]);
    expect(out).toContain('Stands apart: revision 2 by the engineer');
    expect(out).toContain('Stands apart: revision 2 by a colleague');
    expect((await called(['verify', file])).out).not.toContain('Stands apart');

    // which of the two holds goes with the book as a record, and says the same where they stand the other way round
    expect(again.out).toContain('Which holds is said on the page');
    await sayHolds('there', told.aside[0]!.sha256);
    const settled = await call('b', '--out', both, '--data', join(folder, 'there'));
    expect(settled.out).toContain(
      'a colleague said at 2027-03-08T09:00:00.000Z that it holds: it was measured',
    );
    expect(settled.out).not.toContain('Which holds is said on the page');
    const back = await call('--in', both, '--data', join(folder, 'here'), '--json');
    expect(
      archivedSchema.parse(JSON.parse(back.out)).aside.map(({ author, said }) => [author, said]),
    ).toEqual([
      [
        'a colleague',
        [{ holds: false, by: 'a colleague', at: '2027-03-08T09:00:00.000Z', why: 'it was measured' }],
      ],
    ]);
  });

  it('refuses what is no archive, another book, no book, and a call that says neither way', async () => {
    const bad = join(folder, 'bad.zip');
    writeFileSync(bad, 'not one');
    const there = ['--data', join(folder, 'elsewhere')];
    expect((await call('--in', bad, ...there)).err).toContain('This is no archive');
    expect((await call('none', '--out', join(folder, 'x.zip'), ...there)).err).toContain(
      'No book is stored in',
    );
    expect((await call('--in', join(folder, 'absent.zip'), ...there)).status).toBe(2);
    expect((await call(...there)).err).toContain(
      'archive wants a book and --out FILE, or --in FILE after it.',
    );
    await save('third', 'engineer');
    const file = join(folder, 'third.zip');
    await call('b', '--out', file, '--data', join(folder, 'third'));
    const third = await call('c', '--out', file, '--data', join(folder, 'third'));
    expect(third.err).toMatch(/No book c is stored in .*third\. There are: b\./);
    expect((await call('other', '--in', file, ...there)).err).toContain('is of book b, not of other');
  });
});
