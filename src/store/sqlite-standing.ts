import { accept, refuse } from '../quantity/problem.ts';
import type { ClockDoubt } from '../record/clocked.ts';
import { replacedIds } from '../record/current-records.ts';
import type { Envelope } from '../record/envelope.ts';
import { type Replacing, tryKey } from '../record/standing.ts';
import { storeProblem } from './problems.ts';
import type { Row, SqliteConnection } from './sqlite-driver.ts';
import { endOf } from './sqlite-places.ts';
import type { ReadStanding, Store } from './store.ts';

const wholeOr = (given: number | undefined, otherwise: number): number =>
  Number.isSafeInteger(given) ? Math.max(0, Number(given)) : otherwise;

// from name to name by the index: of a hundred thousand records there are some dozens of writers and some hundred checks
const ends = `WITH RECURSIVE writers (writer) AS (
    SELECT (SELECT min(writer) FROM record WHERE book = ?1)
    UNION ALL
    SELECT (SELECT min(writer) FROM record WHERE book = ?1 AND writer > writers.writer)
    FROM writers WHERE writers.writer IS NOT NULL
  )
  SELECT r.book, r.writer, r.sequence, r.hash, p.moment, p.claimed FROM writers AS w
    CROSS JOIN record AS r ON r.position = (SELECT position FROM record
      WHERE book = ?1 AND writer = w.writer AND position <= ?2 ORDER BY sequence DESC LIMIT 1)
    CROSS JOIN record_place AS p ON p.position = r.position`;
const checks = `WITH RECURSIVE checks (tried) AS (
    SELECT (SELECT min(tried) FROM record_place WHERE book = ?1 AND tried IS NOT NULL)
    UNION ALL
    SELECT (SELECT min(tried) FROM record_place WHERE book = ?1 AND tried IS NOT NULL AND tried > checks.tried)
    FROM checks WHERE checks.tried IS NOT NULL
  )
  SELECT tried FROM checks WHERE tried IS NOT NULL`;
const lastTries = `SELECT position, id FROM record_place
  WHERE book = ? AND tried = ? AND tried IS NOT NULL AND position <= ? ORDER BY moment DESC, id DESC LIMIT ? OFFSET ?`;

/** What counts of the records of a book, found by their places. */
export const sqliteStanding = (
  { rows }: SqliteConnection,
  readEnvelope: (row: Row) => Envelope,
): Pick<Store, 'standing' | 'triesOf'> => {
  const noBook = (book: string) => refuse(storeProblem('STORE_BOOK_UNKNOWN', '/book', { given: book }));
  const hasBook = (book: string): boolean => rows('SELECT 1 FROM book WHERE id = ?', book).length > 0;

  const replacing = (book: string, until: number): readonly Replacing[] =>
    rows(
      'SELECT id, supersedes FROM record_place WHERE book = ? AND supersedes IS NOT NULL AND position <= ? ORDER BY position',
      book,
      until,
    ).map(({ id, supersedes }) => ({ id: String(id), supersedes: String(supersedes) }));

  const doubts = (book: string, until: number): readonly ClockDoubt[] =>
    rows(
      `SELECT r.envelope, p.claimed FROM record_place AS p JOIN record AS r ON r.position = p.position
        WHERE p.book = ? AND p.doubt = 1 AND p.position <= ? ORDER BY p.position`,
      book,
      until,
    ).map((row) => {
      const { id, writer, deviceTime } = readEnvelope(row);
      return { record: id, writer, given: deviceTime, before: String(row.claimed) };
    });

  /** Position of the last try of a check that nothing replaces. */
  const lastOf = (
    book: string,
    tried: string,
    until: number,
    replaced: ReadonlySet<string>,
  ): number | undefined => {
    for (let offset = 0; ; offset += 1) {
      const [row] = rows(lastTries, book, tried, until, 1, offset);
      if (row === undefined) return undefined;
      if (!replaced.has(String(row.id))) return Number(row.position);
    }
  };

  /** Positions of all that counts, in order. */
  const positions = (book: string, until: number, all: readonly Replacing[]): readonly number[] => {
    const replaced = replacedIds(all);
    const beside = rows(
      'SELECT position, id, tried FROM record_place WHERE book = ? AND beside = 1 AND position <= ?',
      book,
      until,
    )
      .filter(({ id, tried }) => tried === null || !replaced.has(String(id)))
      .map(({ position }) => Number(position));
    const last = rows(checks, book).flatMap(
      ({ tried }) => lastOf(book, String(tried), until, replaced) ?? [],
    );
    return [...new Set([...beside, ...last])].sort((a, b) => a - b);
  };

  const readAt = (position: number) => {
    const [row] = rows(
      `SELECT r.envelope, p.moment FROM record AS r JOIN record_place AS p ON p.position = r.position
        WHERE r.position = ?`,
      position,
    );
    return { record: readEnvelope(row!), moment: Number(row!.moment) };
  };

  const latest = (book: string): number =>
    Number(rows('SELECT max(position) AS position FROM record WHERE book = ?', book)[0]?.position ?? 0);

  const standing = (book: string, from: ReadStanding) => {
    if (!hasBook(book)) return noBook(book);
    // records are only added: up to a position everything stays as it was
    const until = Math.min(wholeOr(from.until, Number.MAX_SAFE_INTEGER), latest(book));
    const since = wholeOr(from.since, 0);
    const all = replacing(book, until);
    const left = positions(book, until, all).filter((position) => position > since);
    const page = left.slice(0, wholeOr(from.most, left.length));
    return accept({
      records: page.map(readAt),
      ends: rows(ends, book, until).map(endOf),
      replacing: all,
      doubts: doubts(book, until),
      until,
      position: page.at(-1) ?? since,
      more: left.length > page.length,
    });
  };

  const triesOf = (book: string, floor: string, check: string, most: number) => {
    if (!hasBook(book)) return noBook(book);
    const until = latest(book);
    const replaced = replacedIds(replacing(book, until));
    const key = tryKey(floor, check);
    const all = rows(lastTries, book, key, until, -1, 0).filter(({ id }) => !replaced.has(String(id)));
    const records = all
      .slice(0, wholeOr(most, 0))
      .map(({ position }) => readAt(Number(position)))
      .reverse();
    return accept({ records, total: all.length });
  };

  return {
    standing: async (book, from = {}) => standing(book, from),
    triesOf: async (book, floor, check, most) => triesOf(book, floor, check, most),
  };
};
