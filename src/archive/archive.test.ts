import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { unzipSync, zipSync } from 'fflate';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { RevisionMark } from '../book/by-revision.ts';
import { writtenByOthers } from '../media/testing/written-by-others.ts';
import type { Result } from '../quantity/problem.ts';
import { appendRecord, chainFrom, startChain } from '../record/append-record.ts';
import { toHex } from '../record/hex.ts';
import { exportRecords } from '../record/record-file.ts';
import { sha256 } from '../record/sha256.ts';
import { openSqliteStore } from '../store/sqlite-store.ts';
import type { Store } from '../store/store.ts';
import { apartRevisions, joinArchive, openArchive, packArchive, sourceOf } from './index.ts';
import { manifestText, readManifest } from './manifest.ts';

const BOOK = 'oxbow-1';
const AT = '2027-04-19T09:10:00Z';
const text = (said: string): Uint8Array => new TextEncoder().encode(said);
const digestOf = (bytes: Uint8Array): string => toHex(sha256(bytes));
const wholeOf = <T>(result: Result<T>): T => {
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return result.value;
};

let folder = '';
const opened: Store[] = [];
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'archive-'));
});
afterAll(async () => {
  for (const store of opened) await store.close();
  rmSync(folder, { recursive: true, force: true });
});

const emptyStore = async (): Promise<Store> => {
  const store = await openSqliteStore(join(mkdtempSync(join(folder, 'store-')), 'books.sqlite'));
  opened.push(store);
  return store;
};
const bookText = (said: string): string => JSON.stringify({ twinfloor: 1, about: { title: said } });
const withBook = async (): Promise<Store> => {
  const store = await emptyStore();
  wholeOf(await store.createBook({ book: BOOK, text: bookText('first'), author: 'engineer', at: AT }));
  return store;
};

const note = async (store: Store, writer: string, said: string, at = AT): Promise<void> => {
  const head = wholeOf(await store.heads(BOOK)).find((one) => one.writer === writer);
  const chain = head === undefined ? startChain(BOOK, writer) : chainFrom(head);
  const id = `${writer}-${chain.length}`;
  const body = { text: said, by: 'rigger' };
  const draft = { id, revision: 1, kind: 'note', version: 1, deviceTime: at, body };
  wholeOf(await store.appendRecords(BOOK, [wholeOf(appendRecord(chain, draft)).record]));
};
const save = async (store: Store, author: string, said: string): Promise<void> => {
  const { number } = wholeOf(await store.latestRevision(BOOK));
  wholeOf(await store.appendRevision({ book: BOOK, text: bookText(said), author, at: AT, basedOn: number }));
};
const files = Object.values(writtenByOthers).filter((bytes) => bytes[0] === 0xff && bytes[1] === 0xd8);
const attach = async (store: Store, which: number): Promise<void> => {
  const bytes = files[which % files.length]!;
  wholeOf(await store.putMedia(BOOK, { sha256: digestOf(bytes), mediaType: 'image/jpeg' }, [bytes]));
};

const archiveOf = async (store: Store): Promise<Uint8Array> => {
  const pieces: Uint8Array[] = [];
  for await (const piece of wholeOf(await packArchive(store, BOOK)).pieces) pieces.push(piece);
  return new Uint8Array(Buffer.concat(pieces));
};
const joined = async (store: Store, bytes: Uint8Array, only?: string) =>
  joinArchive(store, wholeOf(await openArchive(sourceOf(bytes))), only);
const codesOf = async (bytes: Uint8Array): Promise<readonly string[]> => {
  const archive = await openArchive(sourceOf(bytes));
  return archive.ok ? [] : [...new Set(archive.problems.map(({ code }) => code))];
};

/** A store with some of everything. */
const filled = async (): Promise<Store> => {
  const store = await withBook();
  await save(store, 'engineer', 'second');
  for (const said of ['one', 'two', 'three']) await note(store, 'tablet', said);
  await attach(store, 0);
  return store;
};

describe('an archive', () => {
  it('is a zip archive that another program reads, and gives all of it back in an empty store', async () => {
    const store = await filled();
    const bytes = await archiveOf(store);
    const parts = unzipSync(bytes);
    expect(Object.keys(parts).map((name) => name.replace(/[0-9a-f]{64}/, 'D'))).toEqual([
      'manifest.json',
      'book.records',
      'revisions/D.json',
      'revisions/D.json',
      'media/D.jpg',
    ]);
    expect(Buffer.from(parts[`media/${digestOf(files[0]!)}.jpg`]!)).toEqual(Buffer.from(files[0]!));
    const other = await emptyStore();
    expect(wholeOf(await joined(other, bytes))).toEqual({
      book: BOOK,
      revisions: { added: 2, aside: 0, known: 0 },
      records: { added: 3, known: 0 },
      media: { added: 1, known: 0 },
      told: [],
    });
    expect(wholeOf(await other.latestRevision(BOOK))).toEqual(wholeOf(await store.latestRevision(BOOK)));
    expect(await archiveOf(other)).toEqual(bytes);
  });

  it('is read too where another program has packed it anew', async () => {
    const bytes = await archiveOf(await filled());
    expect(await codesOf(zipSync(unzipSync(bytes), { level: 9 }))).toEqual([]);
  });

  it('taken twice changes nothing the second time', async () => {
    const store = await filled();
    expect(wholeOf(await joined(store, await archiveOf(store)))).toMatchObject({
      revisions: { added: 0, aside: 0, known: 2 },
      records: { added: 0, known: 3 },
      media: { added: 0, known: 1 },
    });
  });
});

describe('two laptops that recorded apart', () => {
  type Deed = readonly ['note' | 'save' | 'attach', number];
  const deeds = fc.array(
    fc.tuple(fc.constantFrom('note', 'save', 'attach'), fc.nat(9)) as fc.Arbitrary<Deed>,
    { maxLength: 6 },
  );
  const done = async (store: Store, name: string, list: readonly Deed[]): Promise<void> => {
    for (const [deed, n] of list) {
      if (deed === 'note') await note(store, `${name}${n % 2}`, `${n}`);
      if (deed === 'save') await save(store, name, `${n}`);
      if (deed === 'attach') await attach(store, n);
    }
  };

  it('joined in any order, any number of times, end with the same, and nothing is lost', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.tuple(deeds, deeds, deeds),
        fc.array(fc.tuple(fc.nat(2), fc.nat(2)), { maxLength: 5 }),
        async (apart, order) => {
          const base = await archiveOf(await withBook());
          const stores: Store[] = [];
          for (const [i, list] of apart.entries()) {
            const store = await emptyStore();
            wholeOf(await joined(store, base));
            await done(store, `laptop${i}-`, list);
            stores.push(store);
          }
          const all: { readonly ids: Set<string>; readonly texts: Set<string> } = {
            ids: new Set(),
            texts: new Set(),
          };
          for (const store of stores) {
            for (const { id } of wholeOf(await store.readRecords(BOOK)).records) all.ids.add(id);
            for (const one of wholeOf(await store.allRevisions(BOOK))) all.texts.add(JSON.stringify(one));
          }
          const join = async (to: number, from: number): Promise<void> => {
            wholeOf(await joined(stores[to]!, await archiveOf(stores[from]!)));
          };
          for (const [to, from] of order) await join(to, from);
          // then once more each from each, so that everything has been everywhere
          for (const to of [0, 1, 2]) for (const from of [0, 1, 2]) await join(to, from);
          const [first, ...others] = await Promise.all(stores.map(archiveOf));
          for (const other of others) expect(other).toEqual(first);
          const [store] = stores;
          const ids = wholeOf(await store!.readRecords(BOOK)).records.map(({ id }) => id);
          expect(new Set(ids)).toEqual(all.ids);
          const revisions = wholeOf(await store!.allRevisions(BOOK)).map((one) => JSON.stringify(one));
          expect(new Set(revisions)).toEqual(all.texts);
        },
      ),
      { numRuns: 8 },
    );
  }, 120_000);

  it('that saved another revision under one number keep both, and each is told whose it is', async () => {
    const here = await withBook();
    const there = await emptyStore();
    wholeOf(await joined(there, await archiveOf(here)));
    await save(here, 'engineer', 'ours');
    await save(there, 'colleague', 'theirs');
    await save(there, 'colleague', 'theirs, once more');
    const { revisions, told } = wholeOf(await joined(here, await archiveOf(there)));
    expect(revisions).toEqual({ added: 0, aside: 2, known: 1 });
    expect(told).toMatchObject([
      { code: 'ARCHIVE_REVISION_ASIDE', given: 2, parts: { by: 'colleague', at: AT } },
      { code: 'ARCHIVE_REVISION_ASIDE', given: 3 },
    ]);
    // what stands here is what this person saved
    expect(wholeOf(await here.latestRevision(BOOK))).toMatchObject({ number: 2, text: bookText('ours') });
    const theirs = digestOf(text(bookText('theirs')));
    expect(wholeOf(await here.revisionText(BOOK, theirs))).toBe(bookText('theirs'));
    const named = (all: readonly RevisionMark[]) => all.map(({ number, author }) => `${number} ${author}`);
    expect(named(wholeOf(await here.asideRevisions(BOOK)))).toEqual(['2 colleague', '3 colleague']);
    expect(wholeOf(await there.asideRevisions(BOOK))).toEqual([]);
    // an archive does not know which holds: both of a number stand apart in it, and what follows one of them follows
    const { manifest } = wholeOf(await openArchive(sourceOf(await archiveOf(here))));
    expect([...named(apartRevisions(manifest.revisions))].sort()).toEqual(['2 colleague', '2 engineer']);
  });

  it('of which one was copied, so that both wrote as one device: the rest is joined, and the place is named', async () => {
    const here = await filled();
    const there = await emptyStore();
    wholeOf(await joined(there, await archiveOf(here)));
    await note(here, 'tablet', 'ours');
    await note(there, 'tablet', 'theirs');
    await note(there, 'phone', 'seen');
    const before = wholeOf(await here.readRecords(BOOK)).records;
    const { records, told } = wholeOf(await joined(here, await archiveOf(there)));
    expect(records.added).toBe(1);
    expect(told).toMatchObject([{ code: 'ARCHIVE_RECORDS_APART', parts: { writer: 'tablet', sequence: 3 } }]);
    expect(wholeOf(await here.readRecords(BOOK)).records.slice(0, -1)).toEqual(before);
  });

  it('of which one had its clock set back a year: all is taken, and the times are said to be in doubt', async () => {
    const there = await filled();
    await note(there, 'tablet', 'late', '2026-04-19T09:10:00Z');
    const here = await withBook();
    const { records, told } = wholeOf(await joined(here, await archiveOf(there)));
    expect(records.added).toBe(4);
    expect(told).toMatchObject([
      { code: 'ARCHIVE_CLOCK_BACK', given: '2026-04-19T09:10:00Z', parts: { writer: 'tablet', sequence: 3 } },
    ]);
  });
});

describe('a bad archive', () => {
  const parts = async (): Promise<Record<string, Uint8Array>> => unzipSync(await archiveOf(await filled()));
  const zip = (list: Record<string, Uint8Array>): Uint8Array => zipSync(list, { level: 0 });
  const nameIn = (list: Record<string, Uint8Array>, start: string): string =>
    Object.keys(list).find((name) => name.startsWith(start)) ?? '';
  const withManifest = (
    list: Record<string, Uint8Array>,
    change: (manifest: Record<string, unknown>) => void,
  ): Record<string, Uint8Array> => {
    const manifest = JSON.parse(new TextDecoder().decode(list['manifest.json'])) as Record<string, unknown>;
    change(manifest);
    return { ...list, 'manifest.json': text(JSON.stringify(manifest)) };
  };
  type Parts = Record<string, Uint8Array>;
  const bad: readonly (readonly [string, (list: Parts) => Uint8Array, string])[] = [
    ['that is none', () => text('not an archive'), 'ARCHIVE_NOT_ZIP'],
    ['that is empty', () => new Uint8Array(), 'ARCHIVE_NOT_ZIP'],
    ['that was cut', (list) => zip(list).slice(0, -40), 'ARCHIVE_NOT_ZIP'],
    ['with a name that leads out', (list) => zip({ ...list, '../../x.json': text('x') }), 'ARCHIVE_NAME'],
    ['with an absolute name', (list) => zip({ ...list, '/etc/passwd': text('x') }), 'ARCHIVE_NAME'],
    ['with a page in it', (list) => zip({ ...list, 'media/index.html': text('x') }), 'ARCHIVE_NAME'],
    [
      'that is a bomb',
      (list) => zipSync({ ...list, 'book.records': new Uint8Array(30_000_000) }, { level: 9 }),
      'ARCHIVE_RATIO',
    ],
    ['without records', ({ 'book.records': _, ...list }) => zip(list), 'ARCHIVE_PART_ABSENT'],
    [
      'with a part that nothing names',
      (list) => zip({ ...list, [`media/${'0'.repeat(64)}.jpg`]: files[1]! }),
      'ARCHIVE_PART_UNLISTED',
    ],
    [
      'with another picture under the digest',
      (list) => zip({ ...list, [nameIn(list, 'media/')]: files[1]! }),
      'ARCHIVE_DIGEST',
    ],
    [
      'with another text of a revision',
      (list) => zip({ ...list, [nameIn(list, 'revisions/')]: text('{}') }),
      'ARCHIVE_DIGEST',
    ],
    [
      'with a record left out',
      (list) => {
        const [head, ...lines] = new TextDecoder().decode(list['book.records']).trimEnd().split('\n');
        return zip({ ...list, 'book.records': text(`${[head, ...lines.slice(1)].join('\n')}\n`) });
      },
      'ARCHIVE_DIGEST',
    ],
    [
      'with the records of another book',
      (list) => {
        const records = text(exportRecords('other', []));
        const heads: unknown[] = [];
        const change = (manifest: Record<string, unknown>): void => {
          manifest.records = { count: 0, sha256: digestOf(records), heads };
        };
        return zip({ ...withManifest(list, change), 'book.records': records });
      },
      'ARCHIVE_OTHER_BOOK',
    ],
    [
      'whose end of the records was cut, with the manifest made to fit',
      (list) => {
        const [, ...lines] = new TextDecoder().decode(list['book.records']).trimEnd().split('\n');
        const kept = lines.slice(0, -1).map((line) => JSON.parse(line) as never);
        const records = text(exportRecords(BOOK, kept));
        const change = (manifest: Record<string, unknown>): void => {
          manifest.records = { ...(manifest.records as object), sha256: digestOf(records) };
        };
        return zip({ ...withManifest(list, change), 'book.records': records });
      },
      'RECORD_TRUNCATED',
    ],
    [
      'with a photograph that is none, named as one',
      (list) => {
        const page = text('<script>alert(1)</script>');
        const { [nameIn(list, 'media/')]: _, ...rest } = list;
        const change = (manifest: Record<string, unknown>): void => {
          manifest.media = [{ sha256: digestOf(page), mediaType: 'image/jpeg', bytes: page.length }];
        };
        return zip({ ...withManifest(rest, change), [`media/${digestOf(page)}.jpg`]: page });
      },
      'ARCHIVE_MEDIA MEDIA_UNKNOWN',
    ],
    [
      'of a newer form',
      (list) =>
        zip(
          withManifest(list, (manifest) => {
            manifest.version = 2;
          }),
        ),
      'ARCHIVE_FROM_FUTURE',
    ],
    [
      'without a manifest that reads',
      (list) => zip({ ...list, 'manifest.json': text('{') }),
      'ARCHIVE_MANIFEST',
    ],
  ];

  it.each(bad)('%s is refused with the reason', async (_, make, code) => {
    expect(await codesOf(make(await parts()))).toEqual(code.split(' '));
  });

  it('of another book than the one that is meant is refused, and nothing is taken', async () => {
    const store = await withBook();
    const done = await joined(store, await archiveOf(await filled()), 'other');
    expect(done).toMatchObject({ ok: false, problems: [{ code: 'ARCHIVE_OTHER_BOOK' }] });
    expect(wholeOf(await store.readRecords(BOOK)).records).toEqual([]);
  });

  it('for which the disk has no room is refused before any of it is taken, and taken once there is room', async () => {
    const archive = wholeOf(await openArchive(sourceOf(await archiveOf(await filled()))));
    const store = await emptyStore();
    const narrow = await joinArchive({ ...store, freeBytes: async () => 1000 }, archive);
    expect(narrow).toMatchObject({ ok: false, problems: [{ code: 'ARCHIVE_NO_ROOM', allowed: '1 kB' }] });
    expect(await store.listBooks()).toEqual([]);
    expect(await store.freeBytes()).toBeGreaterThan(1e6);
    wholeOf(await joinArchive(store, archive));
  });

  it('with any byte changed is refused, or gives what it gave', async () => {
    const bytes = await archiveOf(await filled());
    const manifest = wholeOf(await openArchive(sourceOf(bytes))).manifest;
    await fc.assert(
      fc.asyncProperty(fc.nat(bytes.length - 1), fc.integer({ min: 1, max: 255 }), async (at, by) => {
        const changed = bytes.slice();
        changed[at] = changed[at]! ^ by;
        const archive = await openArchive(sourceOf(changed));
        // dates and versions of the packing program say nothing of the content
        if (archive.ok) expect(archive.value.manifest).toEqual(manifest);
      }),
      { numRuns: 400 },
    );
  }, 60_000);
});

it('a manifest that was written is read as it was', () => {
  const manifest = {
    book: BOOK,
    revisions: [{ number: 1, sha256: 'a'.repeat(64), author: 'engineer', savedAt: AT }],
    records: { count: 0, sha256: 'b'.repeat(64), heads: [] },
    media: [{ sha256: 'c'.repeat(64), mediaType: 'image/png', bytes: 7 }],
  };
  expect(wholeOf(readManifest(manifestText(manifest)))).toEqual(manifest);
});
