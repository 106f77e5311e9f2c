import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { appendRecord, type Chain, startChain } from '../src/record/append-record.ts';
import type { Envelope } from '../src/record/envelope.ts';
import { toHex } from '../src/record/hex.ts';
import { sha256 } from '../src/record/sha256.ts';
import { openConnection } from '../src/store/sqlite-open.ts';
import { openSqliteStore } from '../src/store/sqlite-store.ts';
import type { Store } from '../src/store/store.ts';
import { spread } from './spread.ts';
import type { Row } from './table.ts';

const BOOK = 'bench';
const AT = '2027-04-19T09:10:00Z';
const first = { book: BOOK, text: '{"twinfloor":1}\n', author: 'engineer', at: AT };

const nextOf = (chain: Chain): { readonly record: Envelope; readonly chain: Chain } => {
  const done = appendRecord(chain, {
    id: `${chain.writer}-${chain.length}`,
    revision: 1,
    kind: 'check',
    version: 2,
    deviceTime: AT,
    body: {
      check: `current -M${chain.length % 50}`,
      floor: 'OXBOW',
      by: 'engineer',
      basis: [{ of: '-M3', path: '/current', sha256: '0'.repeat(64) }],
      readings: ['1.02 A', '1.03 A'],
      conditions: [{ condition: 'frequency', read: '60 Hz' }],
    },
  });
  if (!done.ok) throw new Error(JSON.stringify(done.problems));
  return done.value;
};

const writers = 20;
const each = 5000;
const photographs = 2000;

/** Twenty tablets that have written for a long time, and what they photographed. */
const fill = async (store: Store): Promise<void> => {
  for (let w = 0; w < writers; w += 1) {
    let chain = startChain(BOOK, `tablet-${w}`);
    for (let at = 0; at < each; at += 1000) {
      const records: Envelope[] = [];
      for (let i = 0; i < 1000; i += 1) {
        const next = nextOf(chain);
        chain = next.chain;
        records.push(next.record);
      }
      await store.appendRecords(BOOK, records);
    }
  }
  const picture = new Uint8Array(30_000);
  picture.set([0xff, 0xd8, 0xff, 0xe0]);
  for (let i = 0; i < photographs; i += 1) {
    new DataView(picture.buffer).setUint32(8, i);
    await store.putMedia(BOOK, { sha256: toHex(sha256(picture)), mediaType: 'image/jpeg' }, [picture]);
  }
};

/** What a page asks for before it shows the book: its text, the heads, the files, the first page of records. */
const openBook = async (path: string): Promise<number> => {
  const from = performance.now();
  const store = await openSqliteStore(path);
  const got = [
    await store.latestRevision(BOOK),
    await store.heads(BOOK),
    await store.listMedia(BOOK),
    await store.readRecords(BOOK, { most: 1000 }),
  ];
  const took = performance.now() - from;
  if (!got.every(({ ok }) => ok)) throw new Error('the book does not open');
  await store.close();
  return took;
};

const readAll = async (path: string): Promise<number> => {
  const store = await openSqliteStore(path);
  const from = performance.now();
  const all = await store.readRecords(BOOK);
  const took = performance.now() - from;
  if (!all.ok || all.value.records.length !== writers * each) throw new Error('records are missing');
  await store.close();
  return took;
};

/** Records a second that are acknowledged to twenty writers, each of which waits for its answer before it goes on. */
const acknowledged = async (path: string, rounds: number): Promise<number> => {
  const store = await openSqliteStore(path);
  await store.createBook(first);
  // the devices make their records, not the laptop that keeps them
  const chains = Array.from({ length: writers }, (_, w) => {
    let chain = startChain(BOOK, `tablet-${w}`);
    return Array.from({ length: rounds }, () => {
      const next = nextOf(chain);
      chain = next.chain;
      return next.record;
    });
  });
  const from = performance.now();
  await Promise.all(
    chains.map(async (records) => {
      for (const record of records) {
        const done = await store.appendRecords(BOOK, [record]);
        if (!done.ok) throw new Error(JSON.stringify(done.problems));
      }
    }),
  );
  const rate = (writers * rounds) / ((performance.now() - from) / 1000);
  await store.close();
  return rate;
};

/** Commits a second of one small row each, nothing else done, with the same promise of the disk. */
const bare = (path: string, commits: number): number => {
  const connection = openConnection(path);
  connection.exec('CREATE TABLE IF NOT EXISTS bare (row BLOB)');
  const row = new Uint8Array(500);
  const from = performance.now();
  for (let i = 0; i < commits; i += 1) {
    connection.transaction(() => connection.run('INSERT INTO bare VALUES (?)', row));
  }
  const rate = commits / ((performance.now() - from) / 1000);
  connection.close();
  return rate;
};

/** What the store takes to open, and how many writers one disk carries. */
export const storeRows = async (): Promise<readonly Row[]> => {
  const folder = mkdtempSync(join(tmpdir(), 'bench-store-'));
  try {
    const path = join(folder, 'large', 'books.sqlite');
    const store = await openSqliteStore(path);
    await store.createBook(first);
    await fill(store);
    await store.close();
    const opened: number[] = [];
    for (let i = 0; i < 9; i += 1) opened.push(await openBook(path));
    const ratios: number[] = [];
    for (let i = 0; i < 5; i += 1) {
      // neighbours in time on one disk
      const commits = bare(join(folder, `bare-${i}`, 'books.sqlite'), 300);
      ratios.push((await acknowledged(join(folder, `writers-${i}`, 'books.sqlite'), 30)) / commits);
    }
    return [
      {
        what: 'a book with 100 000 records and 2 000 photographs opens',
        unit: 'ms',
        ...spread(opened),
        wanted: { figure: 'median', sense: 'under', bound: 500 },
        remark: 'store, text, heads, files, first thousand records',
      },
      { what: 'and all of its records are read', unit: 'ms', ...spread([await readAll(path)]) },
      {
        what: '20 writers, each awaiting its acknowledgement, to bare commits',
        unit: 'times',
        ...spread(ratios),
        wanted: { figure: 'median', sense: 'over', bound: 0.5 },
      },
    ];
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
};
