import { byRevision, type RevisionMark } from '../book/by-revision.ts';
import { accept, type Result, refuse } from '../quantity/problem.ts';
import { StoreFailure, storeProblem } from './problems.ts';
import { bytesOf, newBookProblems, sha256, utf8 } from './revision-row.ts';
import type { Row, SqliteConnection } from './sqlite-driver.ts';
import type { Store } from './store.ts';

const joinedOf = (row: Row): RevisionMark => ({
  number: Number(row.number),
  sha256: String(row.sha256),
  author: String(row.author),
  ...(row.reason === null ? {} : { reason: String(row.reason) }),
  savedAt: String(row.saved_at),
  ...(row.follows === null ? {} : { follows: String(row.follows) }),
});

const main = `SELECT r.number, r.sha256, r.author, r.reason, r.saved_at, b.sha256 AS follows
  FROM revision AS r LEFT JOIN revision AS b ON b.book = r.book AND b.number = r.number - 1 WHERE r.book = ?`;
const aside = 'SELECT number, sha256, author, reason, saved_at, follows FROM revision_aside WHERE book = ?';

/** Revisions of several laptops: what follows is added, what stands against another is kept beside it. */
export const sqliteRevisions = (
  connection: SqliteConnection,
): Pick<Store, 'allRevisions' | 'asideRevisions' | 'revisionText' | 'takeRevision'> => {
  const { rows, path } = connection;
  const noBook = (book: string) => refuse(storeProblem('STORE_BOOK_UNKNOWN', '/book', { given: book }));
  const hasBook = (book: string): boolean => rows('SELECT 1 FROM book WHERE id = ?', book).length > 0;

  const take = (book: string, revision: RevisionMark, text: string): Result<'added' | 'known' | 'aside'> => {
    const { number, author, reason, savedAt, follows } = revision;
    const bytes = utf8.encode(text);
    const isSame = (other: RevisionMark): boolean => byRevision(other, revision) === 0;
    // of this number and the one before: a book of a thousand revisions is not read for each that comes
    const near = rows(`${main} AND r.number BETWEEN ? AND ?`, book, number - 1, number).map(joinedOf);
    const beside = rows(`${aside} AND number = ?`, book, number).map(joinedOf);
    if ([...near, ...beside].some(isSame)) return accept('known');
    const before = near.find((one) => one.number === number - 1);
    const isTaken = near.some((one) => one.number === number);
    if (number === 1 ? !isTaken : !isTaken && before !== undefined && before.sha256 === follows) {
      if (number === 1) connection.run('INSERT INTO book (id) VALUES (?)', book);
      connection.run(
        'INSERT INTO revision (book, number, text, sha256, author, reason, saved_at, based_on) VALUES (?, ?, ?, ?, ?, ?, ?, ?)',
        book,
        number,
        bytes,
        revision.sha256,
        author,
        reason ?? null,
        savedAt,
        number === 1 ? null : number - 1,
      );
      return accept('added');
    }
    if (!hasBook(book)) return noBook(book);
    connection.run(
      'INSERT INTO revision_aside (book, number, text, sha256, author, reason, saved_at, follows) VALUES (?, ?, ?, ?, ?, ?, ?, ?)',
      book,
      number,
      bytes,
      revision.sha256,
      author,
      reason ?? null,
      savedAt,
      follows ?? null,
    );
    return accept('aside');
  };

  return {
    allRevisions: async (book) => {
      const all = [...rows(main, book), ...rows(aside, book)].map(joinedOf);
      return all.length > 0 ? accept(all.sort(byRevision)) : noBook(book);
    },
    asideRevisions: async (book) =>
      hasBook(book) ? accept(rows(aside, book).map(joinedOf).sort(byRevision)) : noBook(book),
    revisionText: async (book, digest) => {
      const [row] = rows(
        'SELECT text FROM revision WHERE book = ?1 AND sha256 = ?2 UNION ALL SELECT text FROM revision_aside WHERE book = ?1 AND sha256 = ?2 LIMIT 1',
        book,
        digest,
      );
      if (row === undefined) return noBook(book);
      const bytes = bytesOf(row.text);
      if (sha256(bytes) !== digest) {
        throw new StoreFailure('STORE_CORRUPT', path, new Error(`a revision of ${book} is not ${digest}`));
      }
      return accept(new TextDecoder('utf-8', { ignoreBOM: true }).decode(bytes));
    },
    takeRevision: async (book, revision, text) => {
      const { author, reason, savedAt, number } = revision;
      const problems = newBookProblems({
        book,
        text,
        author,
        ...(reason === undefined ? {} : { reason }),
        at: savedAt,
      });
      const given = sha256(utf8.encode(text));
      if (given !== revision.sha256 || !Number.isSafeInteger(number) || number < 1) {
        const rest = { given, allowed: `number from 1, and a text of digest ${revision.sha256}` };
        return refuse(...problems, storeProblem('STORE_INPUT', '/revision', rest));
      }
      return problems.length > 0
        ? refuse(...problems)
        : connection.transaction(() => take(book, revision, text));
    },
  };
};
