import { closeSync, mkdirSync, openSync, statSync } from 'node:fs';
import { dirname } from 'node:path';
import { diskFailure } from './disk-failure.ts';
import { LATEST, type Migration, migrations } from './migrations.ts';
import { StoreFailure } from './problems.ts';
import { openSqlite, type SqliteConnection } from './sqlite-driver.ts';

/** Marks our files among SQLite databases: the letters TWFL. */
export const APPLICATION = 0x5457464c;

/** The operating system names the reason; SQLite says only that it could not open. */
const onDisk = <T>(path: string, work: () => T): T => {
  try {
    return work();
  } catch (error) {
    throw diskFailure(path, error, 'STORE_CANNOT_OPEN');
  }
};

/** A file that can be written, with its folder; made where there is none. */
const prepareFile = (path: string): void => {
  onDisk(path, () => {
    mkdirSync(dirname(path), { recursive: true });
    closeSync(openSync(path, 'a'));
    if (!statSync(path).isFile()) throw new Error('not a file');
  });
};

/** The log stands beside the file, so the folder must be writable too. */
const prepareLog = (path: string): void => {
  onDisk(path, () => {
    closeSync(openSync(`${path}-wal`, 'a'));
  });
};

const wanted = { journal_mode: 'wal', synchronous: 2, foreign_keys: 1, recursive_triggers: 1 } as const;

/** Throws unless the connection keeps what it acknowledges: read back, since SQLite passes over what it cannot do. */
export const assertDurable = (connection: SqliteConnection): void => {
  for (const [name, value] of Object.entries(wanted)) {
    const found = connection.pragma(name);
    if (found !== value) {
      throw new StoreFailure('STORE_NOT_DURABLE', connection.path, undefined, {
        given: `${name} = ${found}`,
        allowed: `${name} = ${value}`,
      });
    }
  }
};

const versionOf = (connection: SqliteConnection): number => Number(connection.pragma('user_version'));

interface Marks {
  readonly version: number;
  readonly application: number;
  readonly isEmpty: boolean;
}

/** In one snapshot: another program may be making the same file at this moment. */
const readMarks = (connection: SqliteConnection): Marks => {
  connection.exec('BEGIN');
  try {
    return {
      version: versionOf(connection),
      application: Number(connection.pragma('application_id')),
      isEmpty: connection.rows('SELECT 1 FROM sqlite_schema LIMIT 1').length === 0,
    };
  } finally {
    connection.exec('COMMIT');
  }
};

/** Throws at a file that is not ours or newer than this program, before anything is written to it. */
const assertOurs = (connection: SqliteConnection): void => {
  const { path } = connection;
  const { version, application, isEmpty } = readMarks(connection);
  if (application !== APPLICATION && !(isEmpty && application === 0 && version === 0)) {
    throw new StoreFailure('STORE_FOREIGN', path);
  }
  if (version > LATEST) {
    throw new StoreFailure('STORE_FROM_FUTURE', path, undefined, { given: version, allowed: String(LATEST) });
  }
};

/** Runs the steps that a file lacks, each in a transaction with its number. */
export const migrate = (connection: SqliteConnection, steps: readonly Migration[]): void => {
  for (const step of steps) {
    connection.transaction(() => {
      // another program may have run the step while this one waited for the lock
      if (versionOf(connection) >= step.version) return;
      connection.exec(`PRAGMA application_id = ${APPLICATION}`);
      connection.exec(step.sql);
      step.fill?.(connection);
      connection.exec(`PRAGMA user_version = ${step.version}`);
    });
  }
};

export interface OpenOptions {
  /** How long a write waits for another program, in milliseconds. */
  readonly busyTimeout?: number;
}

/** Longer than any one write takes, shorter than a person's patience. In milliseconds. */
export const PATIENCE = 2000;

/** An open, checked, migrated file, made where there is none; or a StoreFailure and the file as it was. */
export const openConnection = (path: string, options: OpenOptions = {}): SqliteConnection => {
  prepareFile(path);
  const connection = openSqlite(path, options.busyTimeout ?? PATIENCE);
  try {
    assertOurs(connection);
    prepareLog(path);
    connection.pragma('journal_mode = WAL');
    connection.exec('PRAGMA synchronous = FULL');
    connection.exec('PRAGMA foreign_keys = ON');
    // else REPLACE would remove rows past the triggers that refuse it
    connection.exec('PRAGMA recursive_triggers = ON');
    assertDurable(connection);
    migrate(connection, migrations);
    return connection;
  } catch (error) {
    connection.close();
    throw error;
  }
};
