import { execFileSync } from 'node:child_process';
import {
  chmodSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  truncateSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { writtenByOthers } from '../media/testing/written-by-others.ts';
import { toHex } from '../record/hex.ts';
import { sha256 } from '../record/sha256.ts';
import { LATEST } from './migrations.ts';
import { StoreFailure } from './problems.ts';
import { openSqlite } from './sqlite-driver.ts';
import { assertDurable, openConnection } from './sqlite-open.ts';
import { openSqliteStore, sqliteStore } from './sqlite-store.ts';
import type { Store } from './store.ts';

const AT = '2026-11-24T09:30:00Z';
const first = { book: 'b', text: 'one', author: 'engineer', at: AT };
const next = (basedOn: number, text: string) => ({ ...first, text, basedOn });

let folder: string;
let path: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'twinfloor-failures-'));
  path = join(folder, 'book.db');
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const failureOf = async (work: Promise<unknown>): Promise<StoreFailure> => {
  const outcome: unknown = await work.then(
    () => 'nothing failed',
    (error: unknown) => error,
  );
  expect(outcome).toBeInstanceOf(StoreFailure);
  return outcome as StoreFailure;
};

const made = async (): Promise<void> => {
  const store = await openSqliteStore(path);
  expect(await store.createBook(first)).toMatchObject({ ok: true });
  await store.close();
};
const textsOf = async (store: Store): Promise<readonly string[]> => {
  const entries = await store.listRevisions('b');
  const texts: string[] = [];
  for (const { number } of entries.ok ? entries.value : []) {
    const revision = await store.readRevision('b', number);
    if (revision.ok) texts.push(revision.value.text);
  }
  return texts;
};

describe('what the store keeps is on the disk before it is acknowledged', () => {
  it('write-ahead log, synchronous FULL, foreign keys: read back from the open connection', () => {
    const connection = openConnection(path);
    expect(connection.pragma('journal_mode')).toBe('wal');
    expect(connection.pragma('synchronous')).toBe(2);
    expect(connection.pragma('foreign_keys')).toBe(1);
    expect(connection.pragma('recursive_triggers')).toBe(1);
    connection.close();
  });

  it.each([
    ['synchronous = NORMAL', 'synchronous = 1'],
    ['foreign_keys = OFF', 'foreign_keys = 0'],
    ['journal_mode = DELETE', 'journal_mode = delete'],
  ])('a connection with %s is not taken', (pragma, given) => {
    const connection = openConnection(path);
    connection.pragma(pragma);
    try {
      assertDurable(connection);
      expect.unreachable();
    } catch (error) {
      expect(error).toMatchObject({ code: 'STORE_NOT_DURABLE', problem: { given } });
    }
    connection.close();
  });
});

describe('a file that cannot be opened', () => {
  it('below a file: says so', async () => {
    writeFileSync(join(folder, 'file'), '');
    const failure = await failureOf(openSqliteStore(join(folder, 'file', 'book.db')));
    expect(failure.code).toBe('STORE_CANNOT_OPEN');
    expect(failure.problem.path).toBe(join(folder, 'file', 'book.db'));
    expect(failure.cause).toBeInstanceOf(Error);
  });

  it('a folder in its place: says so', async () => {
    mkdirSync(path);
    expect((await failureOf(openSqliteStore(path))).code).toBe('STORE_CANNOT_OPEN');
  });

  it('folders that are missing are made', async () => {
    const store = await openSqliteStore(join(folder, 'a', 'b', 'book.db'));
    expect(await store.listBooks()).toEqual([]);
    await store.close();
  });

  it('from a future version: says so and leaves every byte', async () => {
    await made();
    const connection = openSqlite(path, 0);
    connection.exec(`PRAGMA user_version = ${LATEST + 1}`);
    connection.pragma('wal_checkpoint(TRUNCATE)');
    connection.close();
    const before = readFileSync(path);
    const failure = await failureOf(openSqliteStore(path));
    expect(failure).toMatchObject({
      code: 'STORE_FROM_FUTURE',
      problem: { given: LATEST + 1, allowed: String(LATEST) },
    });
    expect(readFileSync(path).equals(before)).toBe(true);
  });

  it('of another program: says so and leaves every byte', async () => {
    const other = openSqlite(path, 0);
    other.exec('CREATE TABLE theirs (a INTEGER)');
    other.close();
    const before = readFileSync(path);
    expect((await failureOf(openSqliteStore(path))).code).toBe('STORE_FOREIGN');
    expect(readFileSync(path).equals(before)).toBe(true);
  });
});

describe('a damaged file', () => {
  it('without its header: says so and leaves every byte', async () => {
    await made();
    const bytes = readFileSync(path);
    bytes.fill(0x2a, 0, 100);
    writeFileSync(path, bytes);
    expect((await failureOf(openSqliteStore(path))).code).toBe('STORE_CORRUPT');
    expect(readFileSync(path).equals(bytes)).toBe(true);
  });

  it('that is text: says so', async () => {
    writeFileSync(path, '{"this":"is a book, not a store"}'.repeat(40));
    expect((await failureOf(openSqliteStore(path))).code).toBe('STORE_CORRUPT');
  });

  it('cut in half: fails as damaged, at the opening or at the reading', async () => {
    await made();
    truncateSync(path, Math.floor(statSync(path).size / 2));
    const failure = await failureOf(
      openSqliteStore(path).then(async (store) => {
        await store.latestRevision('b');
        await store.listBooks();
      }),
    );
    expect(failure.code).toBe('STORE_CORRUPT');
  });

  it('with one letter of a book changed on the disk: the text is not handed out', async () => {
    const text = 'a bore of 2 in, read twice';
    const store = await openSqliteStore(path);
    await store.createBook({ ...first, text });
    await store.close();
    const bytes = readFileSync(path);
    const at = bytes.indexOf(text);
    expect(at).toBeGreaterThan(0);
    bytes[at + 10] = '3'.charCodeAt(0);
    writeFileSync(path, bytes);
    const again = await openSqliteStore(path);
    expect((await failureOf(again.latestRevision('b'))).code).toBe('STORE_CORRUPT');
    await again.close();
  });
});

/** Root may write anywhere: as root the work is done under another user's rights. */
const withoutRights = async <T>(work: () => Promise<T>): Promise<T> => {
  const isRoot = process.geteuid?.() === 0;
  const NOBODY = 65_534;
  if (isRoot) process.seteuid?.(NOBODY);
  try {
    return await work();
  } finally {
    if (isRoot) process.seteuid?.(0);
  }
};

describe.skipIf(process.platform === 'win32')('a place without the right to write', () => {
  it('an empty folder: says so and leaves nothing behind', async () => {
    chmodSync(folder, 0o555);
    const failure = await withoutRights(() => failureOf(openSqliteStore(path)));
    expect(failure.code).toBe('STORE_READ_ONLY');
    expect(readdirSync(folder)).toEqual([]);
    chmodSync(folder, 0o755);
  });

  it('a read-only file, a read-only folder around a file: say so and leave every byte', async () => {
    await made();
    for (const name of readdirSync(folder)) if (name !== 'book.db') rmSync(join(folder, name));
    const before = readFileSync(path);
    for (const [file, around] of [
      [0o444, 0o777],
      [0o666, 0o555],
    ] as const) {
      chmodSync(path, file);
      chmodSync(folder, around);
      const failure = await withoutRights(() => failureOf(openSqliteStore(path)));
      expect(failure.code).toBe('STORE_READ_ONLY');
      chmodSync(folder, 0o755);
      expect(readFileSync(path).equals(before)).toBe(true);
    }
  });

  it('a store that turns read-only while open refuses the write and still reads', async () => {
    const connection = openConnection(path);
    const store = sqliteStore(connection);
    await store.createBook(first);
    connection.exec('PRAGMA query_only = ON');
    expect((await failureOf(store.appendRevision(next(1, 'two')))).code).toBe('STORE_READ_ONLY');
    expect(await textsOf(store)).toEqual(['one']);
    await store.close();
  });
});

describe('a full disk', () => {
  const fillUp = async (store: Store): Promise<number> => {
    for (let stored = 1; stored < 1000; stored++) {
      try {
        const saved = await store.appendRevision(next(stored, `${stored} `.repeat(2000)));
        expect(saved.ok).toBe(true);
      } catch (error) {
        expect(error).toMatchObject({ code: 'STORE_FULL' });
        return stored;
      }
    }
    return expect.unreachable('never full');
  };

  it('refuses the write, keeps all that was acknowledged, and goes on when there is room', async () => {
    const connection = openConnection(path);
    const store = sqliteStore(connection);
    await store.createBook(first);
    // SQLite's own limit of the file's size, 4 KiB a page, gives the same code as a disk without room
    connection.pragma('max_page_count = 60');
    const stored = await fillUp(store);
    expect(stored).toBeGreaterThan(5);
    expect(await textsOf(store)).toHaveLength(stored);
    connection.pragma('max_page_count = 10000');
    expect(await store.appendRevision(next(stored, 'room again'))).toMatchObject({ ok: true });
    await store.close();
    const again = await openSqliteStore(path);
    expect(await textsOf(again)).toHaveLength(stored + 1);
    await again.close();
  });

  const mounted = (size: string, at: string): boolean => {
    try {
      execFileSync('mount', ['-t', 'tmpfs', '-o', `size=${size}`, 'tmpfs', at], { stdio: 'ignore' });
      return true;
    } catch {
      return false;
    }
  };

  it('of a real, small disk is said as such, and the store opens again with all that was acknowledged', async ({
    skip,
  }) => {
    const disk = join(folder, 'disk');
    mkdirSync(disk);
    // only root may mount; elsewhere the limit above stands for it
    if (process.platform !== 'linux' || !mounted('400k', disk)) skip();
    try {
      const there = join(disk, 'book.db');
      const store = await openSqliteStore(there);
      await store.createBook(first);
      const stored = await fillUp(store);
      expect(await textsOf(store)).toHaveLength(stored);
      await store.close();
      execFileSync('mount', ['-o', 'remount,size=4m', disk]);
      const again = await openSqliteStore(there);
      expect(await textsOf(again)).toHaveLength(stored);
      expect(await again.appendRevision(next(stored, 'room again'))).toMatchObject({ ok: true });
      await again.close();
    } finally {
      // lazily, since SQLite may hold the file until its statements are collected
      execFileSync('umount', ['-l', disk]);
    }
  });
});

describe('a busy store', () => {
  it('refuses the write after its patience, reads meanwhile, and writes when the other is done', async () => {
    await made();
    const other = openSqlite(path, 0);
    const store = await openSqliteStore(path, { busyTimeout: 30 });
    other.exec('BEGIN IMMEDIATE');
    expect((await failureOf(store.appendRevision(next(1, 'two')))).code).toBe('STORE_BUSY');
    expect(await textsOf(store)).toEqual(['one']);
    other.exec('ROLLBACK');
    expect(await store.appendRevision(next(1, 'two'))).toMatchObject({ ok: true });
    other.close();
    await store.close();
  });
});

describe('media', () => {
  const { jpeg } = writtenByOthers;
  const photo = { sha256: toHex(sha256(jpeg)), mediaType: 'image/jpeg' };
  const place = () => join(folder, 'media', photo.sha256.slice(0, 2), photo.sha256);

  it('whose file is gone are said to be, and healed by sending them again', async () => {
    const store = await openSqliteStore(path);
    await store.createBook(first);
    await store.putMedia('b', photo, [jpeg]);
    rmSync(place());
    expect(await store.readMedia('b', photo.sha256)).toMatchObject({
      ok: false,
      problems: [{ code: 'STORE_MEDIA_GONE' }],
    });
    expect(await store.putMedia('b', photo, [jpeg])).toMatchObject({ ok: true, value: { isNew: false } });
    expect(await store.readMedia('b', photo.sha256)).toMatchObject({ ok: true });
    await store.close();
  });

  it('leave nothing half beside them', async () => {
    const store = await openSqliteStore(path);
    await store.createBook(first);
    await store.putMedia('b', photo, [jpeg]);
    await store.putMedia('b', photo, [jpeg.subarray(1)]);
    expect(readdirSync(join(folder, 'media', 'arriving'))).toEqual([]);
    await store.close();
  });

  it('that the disk refuses are refused, and the records go on', async () => {
    const store = await openSqliteStore(path);
    await store.createBook(first);
    // a file where the folder should be: what root can't write either
    writeFileSync(join(folder, 'media'), '');
    const failure = await failureOf(store.putMedia('b', photo, [jpeg]));
    expect(failure.code).toBe('STORE_FAILED');
    expect(await store.listMedia('b')).toEqual({ ok: true, value: [] });
    expect(await store.appendRevision(next(1, 'two'))).toMatchObject({ ok: true });
    await store.close();
  });
});
