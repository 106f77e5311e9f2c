import Database from 'libsql';
import { StoreFailure, type StoreProblemCode } from './problems.ts';

export type SqlValue = string | number | null | Uint8Array;
export type Row = Readonly<Record<string, SqlValue>>;

/** The little that the store wants of SQLite. Every error that leaves it is a StoreFailure. */
export interface SqliteConnection {
  readonly path: string;
  /** One or several statements without parameters. */
  readonly exec: (sql: string) => void;
  readonly run: (sql: string, ...values: readonly SqlValue[]) => void;
  readonly rows: (sql: string, ...values: readonly SqlValue[]) => readonly Row[];
  /** Value of a pragma as it is now. */
  readonly pragma: (name: string) => SqlValue | undefined;
  /** Everything that the work writes, or nothing. Takes the write lock at once. */
  readonly transaction: <T>(work: () => T) => T;
  readonly close: () => void;
}

// primary result codes of SQLite, the low byte of the extended ones (sqlite.org, "Result and Error Codes": memory)
const CODES: Readonly<Record<number, StoreProblemCode>> = {
  5: 'STORE_BUSY', // SQLITE_BUSY
  6: 'STORE_BUSY', // SQLITE_LOCKED
  8: 'STORE_READ_ONLY', // SQLITE_READONLY
  11: 'STORE_CORRUPT', // SQLITE_CORRUPT
  13: 'STORE_FULL', // SQLITE_FULL
  14: 'STORE_CANNOT_OPEN', // SQLITE_CANTOPEN
  26: 'STORE_CORRUPT', // SQLITE_NOTADB
};

const EXTENDED: Readonly<Record<number, StoreProblemCode>> = {
  4874: 'STORE_FULL', // SQLITE_IOERR_SHMSIZE: no room for the index of the log
};

/** The driver gives the code as `rawCode`, and where the file cannot be opened only at the end of its message. */
const codeOf = (error: unknown): number | undefined => {
  if (!(error instanceof Error)) return undefined;
  const { rawCode } = error as { rawCode?: unknown };
  if (typeof rawCode === 'number') return rawCode;
  const inMessage = /^ConnectionFailed\(.*: (\d+)"\)$/.exec(error.message)?.[1];
  return inMessage === undefined ? undefined : Number(inMessage);
};

const failureOf = (error: unknown, path: string): StoreFailure => {
  const code = codeOf(error) ?? -1;
  return new StoreFailure(EXTENDED[code] ?? CODES[code & 0xff] ?? 'STORE_FAILED', path, error);
};

/** The driver hands out blobs as Buffer or ArrayBuffer, by the call. */
const plain = (value: unknown): SqlValue => {
  if (value instanceof ArrayBuffer) return new Uint8Array(value);
  return value as SqlValue;
};

export const openSqlite = (path: string, busyTimeout: number): SqliteConnection => {
  const guard = <T>(work: () => T): T => {
    try {
      return work();
    } catch (error) {
      throw failureOf(error, path);
    }
  };
  const database = guard(() => new Database(path, { timeout: busyTimeout }));
  const prepared = new Map<string, Database.Statement<unknown[]>>();
  let open = true;

  const guardOpen = <T>(work: () => T): T => {
    if (!open) throw new StoreFailure('STORE_CLOSED', path);
    return guard(work);
  };
  const statement = (sql: string): Database.Statement<unknown[]> => {
    const known = prepared.get(sql);
    if (known) return known;
    const made = database.prepare<unknown[]>(sql);
    prepared.set(sql, made);
    return made;
  };
  // always to the last row: a statement left half read would hold its snapshot and block the checkpoint
  const all = (query: Database.Statement<unknown[]>, values: readonly SqlValue[]): readonly Row[] =>
    query
      .all([...values])
      .map((row) =>
        Object.fromEntries(Object.entries(row as object).map(([name, value]) => [name, plain(value)])),
      );

  return {
    path,
    exec: (sql) => guardOpen(() => void database.exec(sql)),
    run: (sql, ...values) => guardOpen(() => void statement(sql).run([...values])),
    rows: (sql, ...values) => guardOpen(() => all(statement(sql), values)),
    pragma: (name) =>
      guardOpen(() => Object.values(all(database.prepare<unknown[]>(`PRAGMA ${name}`), [])[0] ?? {})[0]),
    transaction: (work) => {
      guardOpen(() => void database.exec('BEGIN IMMEDIATE'));
      try {
        const result = work();
        guard(() => void database.exec('COMMIT'));
        return result;
      } catch (error) {
        // what the work throws passes as it is; a full disk has rolled back already, and a second rollback
        // would hide the reason
        if (database.inTransaction) guard(() => void database.exec('ROLLBACK'));
        throw error;
      }
    },
    close: () => {
      if (!open) return;
      open = false;
      guard(() => void database.close());
    },
  };
};
