import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, afterEach, beforeEach, describe, expect, it } from 'vitest';
import { appendRecord, startChain } from '../record/append-record.ts';
import { LATEST, migrations } from './migrations.ts';
import { openSqlite, type SqliteConnection } from './sqlite-driver.ts';
import { APPLICATION, migrate, openConnection } from './sqlite-open.ts';
import { placeRecord } from './sqlite-places.ts';
import { sqliteStore } from './sqlite-store.ts';

let folder: string;
let path: string;
const open: SqliteConnection[] = [];
const kept = <T extends SqliteConnection>(connection: T): T => {
  open.push(connection);
  return connection;
};

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'twinfloor-migrations-'));
  path = join(folder, 'book.db');
});
afterEach(() => {
  for (const connection of open.splice(0)) connection.close();
  rmSync(folder, { recursive: true, force: true });
});

const DIGEST = 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad'; // of "abc", FIPS 180-4
const made = appendRecord(startChain('b', 'w'), {
  id: 'r0',
  revision: 1,
  kind: 'note',
  version: 1,
  deviceTime: '2026-11-24T09:30:00Z',
  body: { text: 'kept', by: 'rigger' },
});
if (!made.ok) throw new Error('the sample record is refused');
const { record } = made.value;

const blob = (text: string): Uint8Array => new TextEncoder().encode(text);
const insertRecord = (connection: SqliteConnection, position: number): void =>
  connection.run(
    'INSERT INTO record (position, book, id, writer, sequence, previous, hash, envelope) VALUES (?, ?, ?, ?, ?, ?, ?, ?)',
    position,
    record.book,
    record.id,
    record.writer,
    record.sequence,
    record.previous,
    record.hash,
    blob(JSON.stringify(record)),
  );

/** Rows as the given version of the tables held them; each later migration must keep them. */
const fill: Readonly<Record<number, (connection: SqliteConnection) => void>> = {
  1: (connection) => {
    connection.run('INSERT INTO book (id) VALUES (?)', 'b');
    connection.run(
      'INSERT INTO revision (book, number, text, sha256, author, reason, saved_at, based_on) VALUES (?, 1, ?, ?, ?, NULL, ?, NULL)',
      'b',
      blob('abc'),
      DIGEST,
      'engineer',
      '2026-11-24T09:30:00Z',
    );
    insertRecord(connection, 1);
  },
  3: (connection) => {
    fill[1]?.(connection);
    connection.run(
      'INSERT INTO media (book, sha256, media_type, bytes) VALUES (?, ?, ?, ?)',
      'b',
      DIGEST,
      'image/png',
      3,
    );
  },
  5: (connection) => {
    fill[3]?.(connection);
    placeRecord(connection, 1, record);
  },
};
const filledAt = (version: number) =>
  fill[
    Math.max(
      ...Object.keys(fill)
        .map(Number)
        .filter((one) => one <= version),
    )
  ];

const run = new Set<string>();

describe('migrations', () => {
  it('are numbered from 1 without gaps', () => {
    expect(migrations.map((step) => step.version)).toEqual(migrations.map((_, i) => i + 1));
    expect(LATEST).toBe(migrations.length);
  });

  it.each(migrations.map((step) => step.version))(
    'a file of version %i is brought up with all its rows',
    async (version) => {
      const old = kept(openSqlite(path, 0));
      migrate(old, migrations.slice(0, version));
      expect(old.pragma('user_version')).toBe(version);
      filledAt(version)?.(old);
      old.close();

      const connection = kept(openConnection(path));
      for (const step of migrations.slice(version)) run.add(`${version} to ${step.version}`);
      expect(connection.pragma('user_version')).toBe(LATEST);
      const store = sqliteStore(connection);
      expect(await store.latestRevision('b')).toMatchObject({ ok: true, value: { number: 1, text: 'abc' } });
      expect(await store.readRecords('b')).toMatchObject({ ok: true, value: { records: [record] } });
      expect(await store.standing('b')).toMatchObject({ ok: true, value: { records: [{ record }] } });
      expect(
        await store.appendRevision({ book: 'b', text: 'd', author: 'a', at: record.deviceTime, basedOn: 1 }),
      ).toMatchObject({ ok: true });
    },
  );

  it('of a new file all run, and of an up-to-date file none', () => {
    const connection = kept(openConnection(path));
    for (const step of migrations) run.add(`0 to ${step.version}`);
    expect(connection.pragma('user_version')).toBe(LATEST);
    expect(connection.pragma('application_id')).toBe(APPLICATION);
    const before = connection.pragma('schema_version');
    connection.close();
    expect(kept(openConnection(path)).pragma('schema_version')).toBe(before);
  });

  it('that fail leave the file at the step before', () => {
    const connection = kept(openSqlite(path, 0));
    const broken = {
      version: 2,
      name: 'broken',
      sql: 'CREATE TABLE half (a) STRICT; CREATE TABLE half (b INTEGER) STRICT',
    };
    expect(() => migrate(connection, [migrations[0]!, broken])).toThrow(/STORE_FAILED/);
    expect(connection.pragma('user_version')).toBe(1);
    expect(connection.rows("SELECT 1 FROM sqlite_schema WHERE name = 'half'")).toEqual([]);
    connection.close();
    expect(kept(openConnection(path)).pragma('user_version')).toBe(LATEST);
  });

  afterAll(() => {
    // whoever adds a migration and no rows to carry over it is told here
    for (const step of migrations) {
      expect(run, `no test ran migration ${step.version}`).toContain(`0 to ${step.version}`);
      if (step.version > 1) expect(run).toContain(`${step.version - 1} to ${step.version}`);
    }
  });
});

describe('the tables themselves', () => {
  const filled = (): SqliteConnection => {
    const connection = kept(openConnection(path));
    fill[3]?.(connection);
    return connection;
  };
  const refused: readonly (readonly [string, string])[] = [
    ['a revision is not changed', "UPDATE revision SET author = 'other'"],
    ['a revision is not removed', 'DELETE FROM revision'],
    [
      'a revision is not replaced',
      `INSERT OR REPLACE INTO revision SELECT book, number, x'61', sha256, author, reason, saved_at, based_on FROM revision`,
    ],
    [
      'a revision leaves no gap',
      `INSERT INTO revision SELECT book, 3, text, sha256, author, reason, saved_at, 2 FROM revision`,
    ],
    [
      'a revision is based on the one before',
      `INSERT INTO revision SELECT book, 2, text, sha256, author, reason, saved_at, NULL FROM revision`,
    ],
    ['a record is not changed', `UPDATE record SET envelope = x'61'`],
    ['a record is not removed', 'DELETE FROM record'],
    [
      'a record is not replaced',
      `INSERT OR REPLACE INTO record SELECT position, book, id, writer, sequence, previous, hash, x'61' FROM record`,
    ],
    [
      'a record is not replaced at another position',
      `INSERT OR REPLACE INTO record SELECT 2, book, id, writer, sequence, previous, hash, x'61' FROM record`,
    ],
    [
      'a record follows the last of its writer',
      `INSERT INTO record SELECT 2, book, 'r2', writer, 2, hash, previous, x'61' FROM record`,
    ],
    [
      'a record names the hash before it',
      `INSERT INTO record SELECT 2, book, 'r1', writer, 1, previous, previous, x'61' FROM record`,
    ],
    ['a file is not said to be of another form', `UPDATE media SET media_type = 'image/jpeg'`],
    ['a file is not removed', 'DELETE FROM media'],
    ['a file is not replaced', 'INSERT OR REPLACE INTO media SELECT book, sha256, media_type, 4 FROM media'],
    ['a book is not removed', 'DELETE FROM book'],
    ['a book is not renamed', `UPDATE book SET id = 'c'`],
    [
      'a revision belongs to a book',
      `INSERT INTO revision SELECT 'nobody', 1, text, sha256, author, reason, saved_at, NULL FROM revision`,
    ],
  ];

  it.each(refused)('refuse what would lose or alter a row: %s', (_, sql) => {
    const connection = filled();
    const before = [connection.rows('SELECT * FROM revision'), connection.rows('SELECT * FROM record')];
    expect(() => connection.exec(sql)).toThrow(/only added|follows|FOREIGN KEY/);
    expect([connection.rows('SELECT * FROM revision'), connection.rows('SELECT * FROM record')]).toEqual(
      before,
    );
  });

  it('refuse it also to a tool that sets no pragma of ours', () => {
    filled().close();
    const other = kept(openSqlite(path, 0));
    for (const [, sql] of refused.filter(([, statement]) => !statement.includes('nobody'))) {
      expect(() => other.exec(sql), sql).toThrow(/only added|follows/);
    }
    expect(other.rows('SELECT count(*) AS n FROM record')).toEqual([{ n: 1 }]);
  });

  it('take the row that does follow', () => {
    const connection = filled();
    connection.exec(`INSERT INTO record SELECT 2, book, 'r1', writer, 1, hash, previous, x'61' FROM record`);
    connection.exec(
      `INSERT INTO revision SELECT book, 2, text, sha256, author, reason, saved_at, 1 FROM revision`,
    );
    expect(connection.rows('SELECT count(*) AS n FROM record')).toEqual([{ n: 2 }]);
  });
});
