import { dirname } from 'node:path';
import { accept, type Problem, type Result, refuse } from '../quantity/problem.ts';
import { canonicalJson } from '../record/canonical-json.ts';
import { type Envelope, envelopeProblems, type Head, ORIGIN } from '../record/envelope.ts';
import { hashRecord } from '../record/hash-record.ts';
import { recordProblem } from '../record/problems.ts';
import { freeBytes } from './free-bytes.ts';
import { groupedCommits, Refusal } from './grouped-commits.ts';
import { StoreFailure, storeProblem } from './problems.ts';
import { bytesOf, ENTRY, entryOf, newBookProblems, sha256, utf8 } from './revision-row.ts';
import type { Row, SqliteConnection } from './sqlite-driver.ts';
import { sqliteMedia } from './sqlite-media.ts';
import { type OpenOptions, openConnection, PATIENCE } from './sqlite-open.ts';
import { placeRecord } from './sqlite-places.ts';
import { sqliteRevisions } from './sqlite-revisions.ts';
import { sqliteStanding } from './sqlite-standing.ts';
import type { Appended, BookEntry, NewBook, NewRevision, Revision, RevisionEntry, Store } from './store.ts';

/** Between two attempts to open, in milliseconds. */
const PAUSE = 20;

/** Every record must be what it claims before it may become part of what is kept for good. */
const unfitRecords = (book: string, records: readonly Envelope[]): readonly Problem[] =>
  records.flatMap((record, i) => {
    const path = `/records/${i}`;
    const malformed = envelopeProblems(record, path);
    if (malformed.length > 0) return malformed;
    if (record.book !== book) {
      const rest = { given: record.book, allowed: book };
      return [recordProblem('RECORD_WRONG_BOOK', `${path}/book`, rest)];
    }
    const hash = hashRecord(record);
    if (!hash.ok) return hash.problems.map((one) => ({ ...one, path: `${path}${one.path}` }));
    if (hash.value === record.hash) return [];
    const { writer, sequence } = record;
    const rest = { given: record.hash, allowed: hash.value, parts: { writer, sequence } };
    return [recordProblem('RECORD_CHANGED', `${path}/hash`, rest)];
  });

/** The store on a connection that openConnection made. */
export const sqliteStore = (connection: SqliteConnection): Store => {
  const { path, rows } = connection;

  const hasBook = (book: string): boolean => rows('SELECT 1 FROM book WHERE id = ?', book).length > 0;
  const noBook = (book: string) => refuse(storeProblem('STORE_BOOK_UNKNOWN', '/book', { given: book }));

  const latestEntry = (book: string): RevisionEntry | undefined => {
    const sql = `SELECT ${ENTRY} FROM revision WHERE book = ? ORDER BY number DESC LIMIT 1`;
    return rows(sql, book).map(entryOf)[0];
  };

  const readText = (row: Row): Revision => {
    const entry = entryOf(row);
    const bytes = bytesOf(row.text);
    if (sha256(bytes) !== entry.sha256) {
      const cause = new Error(`revision ${entry.number} of ${entry.book} does not give its SHA-256`);
      throw new StoreFailure('STORE_CORRUPT', path, cause);
    }
    // ignoreBOM keeps a byte order mark as part of the text
    return { ...entry, text: new TextDecoder('utf-8', { ignoreBOM: true }).decode(bytes) };
  };

  const insertRevision = (given: NewBook, number: number): RevisionEntry => {
    const bytes = utf8.encode(given.text);
    const entry: RevisionEntry = {
      book: given.book,
      number,
      sha256: sha256(bytes),
      author: given.author,
      ...(given.reason === undefined ? {} : { reason: given.reason }),
      savedAt: given.at,
      ...(number === 1 ? {} : { basedOn: number - 1 }),
    };
    connection.run(
      'INSERT INTO revision (book, number, text, sha256, author, reason, saved_at, based_on) VALUES (?, ?, ?, ?, ?, ?, ?, ?)',
      entry.book,
      number,
      bytes,
      entry.sha256,
      entry.author,
      entry.reason ?? null,
      entry.savedAt,
      entry.basedOn ?? null,
    );
    return entry;
  };

  /** Whether a stored revision is this very save: then its acknowledgement was lost, and it is given again. */
  const isSame = (entry: RevisionEntry, given: NewBook): boolean =>
    entry.author === given.author &&
    entry.reason === given.reason &&
    entry.savedAt === given.at &&
    entry.sha256 === sha256(utf8.encode(given.text));

  const createBook = (first: NewBook): Result<RevisionEntry> => {
    const problems = newBookProblems(first);
    if (problems.length > 0) return refuse(...problems);
    return connection.transaction(() => {
      const stored = rows(`SELECT ${ENTRY} FROM revision WHERE book = ? AND number = 1`, first.book).map(
        entryOf,
      )[0];
      if (stored && isSame(stored, first)) return accept(stored);
      if (stored) return refuse(storeProblem('STORE_BOOK_EXISTS', '/book', { given: first.book }));
      connection.run('INSERT INTO book (id) VALUES (?)', first.book);
      return accept(insertRevision(first, 1));
    });
  };

  const appendRevision = (next: NewRevision): Result<RevisionEntry> => {
    const problems = newBookProblems(next);
    if (problems.length > 0) return refuse(...problems);
    return connection.transaction(() => {
      const latest = latestEntry(next.book);
      if (!latest) return noBook(next.book);
      if (latest.basedOn === next.basedOn && isSame(latest, next)) return accept(latest);
      if (latest.number !== next.basedOn) {
        const rest = { given: next.basedOn, allowed: String(latest.number) };
        return refuse(storeProblem('STORE_CONFLICT', '/basedOn', rest));
      }
      return accept(insertRevision(next, latest.number + 1));
    });
  };

  const readRevision = (book: string, number: number): Result<Revision> => {
    const found = Number.isSafeInteger(number)
      ? rows(`SELECT ${ENTRY}, text FROM revision WHERE book = ? AND number = ?`, book, number).map(
          readText,
        )[0]
      : undefined;
    if (found) return accept(found);
    const latest = latestEntry(book);
    if (!latest) return noBook(book);
    const rest = { given: number, allowed: `1 to ${latest.number}` };
    return refuse(storeProblem('STORE_REVISION_UNKNOWN', '/number', rest));
  };

  const latestRevision = (book: string): Result<Revision> => {
    const sql = `SELECT ${ENTRY}, text FROM revision WHERE book = ? ORDER BY number DESC LIMIT 1`;
    const found = rows(sql, book).map(readText)[0];
    return found ? accept(found) : noBook(book);
  };

  const listRevisions = (book: string): Result<readonly RevisionEntry[]> => {
    const found = rows(`SELECT ${ENTRY} FROM revision WHERE book = ? ORDER BY number`, book).map(entryOf);
    return found.length > 0 ? accept(found) : noBook(book);
  };

  const listBooks = (): readonly BookEntry[] => {
    const sql = `SELECT ${ENTRY} FROM revision AS r
      WHERE number = (SELECT max(number) FROM revision WHERE book = r.book) ORDER BY book`;
    return rows(sql).map((row) => ({ book: String(row.book), latest: entryOf(row) }));
  };

  const headOf = (book: string, writer: string): { readonly sequence: number; readonly hash: string } => {
    const sql =
      'SELECT sequence, hash FROM record WHERE book = ? AND writer = ? ORDER BY sequence DESC LIMIT 1';
    const [row] = rows(sql, book, writer);
    return row ? { sequence: Number(row.sequence), hash: String(row.hash) } : { sequence: -1, hash: ORIGIN };
  };

  /** Adds one record within a transaction, and says whether it is new. */
  const appendOne = (record: Envelope, at: string): boolean => {
    const { book, id, writer, sequence, hash, previous } = record;
    const sql =
      'SELECT id, hash FROM record WHERE book = ? AND id = ? UNION SELECT id, hash FROM record WHERE book = ? AND writer = ? AND sequence = ?';
    const stored = rows(sql, book, id, book, writer, sequence);
    if (stored.length > 0) {
      // equal hashes mean equal content, of which the id is part
      if (stored.length === 1 && stored[0]?.hash === hash) return false;
      const rest = { given: hash, allowed: stored.map((row) => String(row.hash)) };
      throw new Refusal([storeProblem('STORE_RECORD_CONFLICT', at, rest)]);
    }
    const head = headOf(book, writer);
    if (sequence !== head.sequence + 1) {
      const rest = { given: sequence, allowed: String(head.sequence + 1) };
      throw new Refusal([storeProblem('STORE_RECORD_GAP', `${at}/sequence`, rest)]);
    }
    if (previous !== head.hash) {
      const rest = { given: previous, allowed: head.hash };
      throw new Refusal([storeProblem('STORE_RECORD_CONFLICT', `${at}/previous`, rest)]);
    }
    const text = canonicalJson(record);
    if (!text.ok) throw new Refusal(text.problems);
    const [last] = rows('SELECT max(position) AS position FROM record');
    const position = 1 + Number(last?.position ?? 0);
    connection.run(
      `INSERT INTO record (position, book, id, writer, sequence, previous, hash, envelope)
        VALUES (?, ?, ?, ?, ?, ?, ?, ?)`,
      position,
      book,
      id,
      writer,
      sequence,
      previous,
      hash,
      utf8.encode(text.value),
    );
    placeRecord(connection, position, record);
    return true;
  };

  const grouped = groupedCommits(connection);
  const appendRecords: Store['appendRecords'] = async (book, records) => {
    const problems = unfitRecords(book, records);
    if (problems.length > 0) return refuse(...problems);
    return grouped((): Result<Appended> => {
      if (!hasBook(book)) return noBook(book);
      const added: string[] = [];
      const known: string[] = [];
      records.forEach((record, i) => {
        (appendOne(record, `/records/${i}`) ? added : known).push(record.id);
      });
      return accept({ added, known });
    });
  };

  const readEnvelope = (row: Row): Envelope => {
    try {
      return JSON.parse(new TextDecoder('utf-8', { fatal: true }).decode(bytesOf(row.envelope))) as Envelope;
    } catch (cause) {
      throw new StoreFailure('STORE_CORRUPT', path, cause);
    }
  };

  const readRecords: Store['readRecords'] = async (book, from = {}) => {
    if (!hasBook(book)) return noBook(book);
    const whole = (given: number | undefined): number | undefined =>
      Number.isSafeInteger(given) ? given : undefined;
    const since = whole(from.since) ?? 0;
    const most = Number.isSafeInteger(from.most)
      ? Math.max(0, Number(from.most))
      : Number.MAX_SAFE_INTEGER - 1;
    const found = rows(
      'SELECT position, envelope FROM record WHERE book = ? AND position > ? ORDER BY position LIMIT ?',
      book,
      since,
      most + 1,
    );
    const page = found.slice(0, most);
    return accept({
      records: page.map(readEnvelope),
      position: Number(page.at(-1)?.position ?? since),
      more: found.length > page.length,
    });
  };

  const readChain: Store['readChain'] = async (book, writer, { behind = -1, most = -1 } = {}) => {
    if (!hasBook(book)) return noBook(book);
    const sql =
      'SELECT envelope FROM record WHERE book = ? AND writer = ? AND sequence > ? ORDER BY sequence LIMIT ?';
    return accept(rows(sql, book, writer, behind, most).map(readEnvelope));
  };

  const heads = (book: string): Result<readonly Head[]> => {
    if (!hasBook(book)) return noBook(book);
    // from writer to writer by the index: a book of a hundred thousand records has some dozens of writers
    const sql = `WITH RECURSIVE writers (writer) AS (
        SELECT (SELECT min(writer) FROM record WHERE book = ?1)
        UNION ALL
        SELECT (SELECT min(writer) FROM record WHERE book = ?1 AND writer > writers.writer)
        FROM writers WHERE writers.writer IS NOT NULL
      )
      SELECT r.writer, r.sequence, r.hash FROM writers AS w JOIN record AS r
        ON r.book = ?1 AND r.writer = w.writer AND r.sequence =
          (SELECT max(sequence) FROM record WHERE book = ?1 AND writer = w.writer)`;
    const found = rows(sql, book).map((row) => ({
      book,
      writer: String(row.writer),
      sequence: Number(row.sequence),
      hash: String(row.hash),
    }));
    return accept(found.sort((a, b) => (a.writer < b.writer ? -1 : 1)));
  };

  let isOpen = true;
  const close = (): void => {
    if (!isOpen) return;
    isOpen = false;
    try {
      // the log goes back into the file, so that a copy of the file alone is whole
      connection.pragma('wal_checkpoint(TRUNCATE)');
    } catch (error) {
      // a full or read-only disk leaves the log beside the file, which loses nothing
      if (!(error instanceof StoreFailure)) throw error;
    }
    connection.close();
  };

  return {
    // async, so that a failure rejects the promise whatever the driver does
    listBooks: async () => listBooks(),
    createBook: async (first) => createBook(first),
    latestRevision: async (book) => latestRevision(book),
    readRevision: async (book, number) => readRevision(book, number),
    listRevisions: async (book) => listRevisions(book),
    appendRevision: async (next) => appendRevision(next),
    appendRecords,
    readRecords,
    readChain,
    heads: async (book) => heads(book),
    ...sqliteStanding(connection, readEnvelope),
    ...sqliteMedia(connection),
    ...sqliteRevisions(connection),
    freeBytes: () => freeBytes(dirname(connection.path)),
    close: async () => close(),
  };
};

/**
 * Opens the store in a file, makes it where there is none, and brings an older one up to date.
 *
 * Method   SQLite, write-ahead log, synchronous FULL: a commit is on the disk before it is acknowledged
 * Symbols  path     of the file; its log stands beside it;  options  see OpenOptions
 * Returns  store
 * Problems rejects with StoreFailure STORE_READ_ONLY, STORE_FULL, STORE_BUSY, STORE_CORRUPT,
 *          STORE_FROM_FUTURE, STORE_FOREIGN, STORE_NOT_DURABLE, STORE_CANNOT_OPEN; the file is then untouched
 * Assumes  a local disk that honours fsync
 * Cost     one open; each write one sync
 * Source   sqlite.org, "Write-Ahead Logging", "PRAGMA synchronous" (memory)
 */
export const openSqliteStore = async (path: string, options: OpenOptions = {}): Promise<Store> => {
  const attempts = Math.ceil((options.busyTimeout ?? PATIENCE) / PAUSE);
  for (let attempt = 1; ; attempt++) {
    try {
      return sqliteStore(openConnection(path, options));
    } catch (error) {
      // SQLite does not wait where two programs switch a new file to the log at once, so we do
      const isBusy = error instanceof StoreFailure && error.code === 'STORE_BUSY';
      if (!isBusy || attempt >= attempts) throw error;
      await new Promise((resolve) => setTimeout(resolve, PAUSE));
    }
  }
};
