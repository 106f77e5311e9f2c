import { dirname, join } from 'node:path';
import { plainType } from '../media/index.ts';
import { accept, type Problem, type Result, refuse } from '../quantity/problem.ts';
import { isHash } from '../record/envelope.ts';
import { mediaFiles } from './media-files.ts';
import { storeProblem } from './problems.ts';
import type { Row, SqliteConnection } from './sqlite-driver.ts';
import type { MediaEntry, Store } from './store.ts';

const entryOf = (row: Row): MediaEntry => ({
  sha256: String(row.sha256),
  mediaType: String(row.media_type),
  bytes: Number(row.bytes),
});

/**
 * Pictures, films and sounds of a book: the bytes in a folder beside the database, what each is in a table.
 * Not in the database itself: a film of 50 MB would pass the log twice, hold up every record behind it, and could not
 * be read from its middle.
 */
export const sqliteMedia = (
  connection: SqliteConnection,
): Pick<Store, 'putMedia' | 'listMedia' | 'readMedia'> => {
  const { rows } = connection;
  const files = mediaFiles(join(dirname(connection.path), 'media'));
  const known = (book: string, sha256: string): MediaEntry | undefined =>
    rows('SELECT sha256, media_type, bytes FROM media WHERE book = ? AND sha256 = ?', book, sha256).map(
      entryOf,
    )[0];
  const bookProblems = (book: string): readonly Problem[] =>
    rows('SELECT 1 FROM book WHERE id = ?', book).length > 0
      ? []
      : [storeProblem('STORE_BOOK_UNKNOWN', '/book', { given: book })];
  const unknown = (book: string, sha256: string): Result<never> => {
    const problems = bookProblems(book);
    return problems.length > 0
      ? refuse(...problems)
      : refuse(storeProblem('STORE_MEDIA_UNKNOWN', '/sha256', { given: sha256 }));
  };

  return {
    putMedia: async (book, said, chunks) => {
      const { sha256 } = said;
      const problems = bookProblems(book);
      if (problems.length > 0) return refuse(...problems);
      if (!isHash(sha256)) {
        const rest = { given: sha256, allowed: 'SHA-256, 64 hexadecimal digits' };
        return refuse(storeProblem('STORE_INPUT', '/sha256', rest));
      }
      // also where it is known: that heals a file which the disk has lost
      const written = await files.write({ sha256, mediaType: plainType(said.mediaType) }, chunks);
      if (!written.ok) return written;
      return connection.transaction(() => {
        const before = known(book, sha256);
        if (before !== undefined) return accept({ ...before, isNew: false });
        const { mediaType, bytes } = written.value;
        connection.run(
          'INSERT INTO media (book, sha256, media_type, bytes) VALUES (?, ?, ?, ?)',
          book,
          sha256,
          mediaType,
          bytes,
        );
        return accept({ ...written.value, isNew: true });
      });
    },
    listMedia: async (book) => {
      const problems = bookProblems(book);
      if (problems.length > 0) return refuse(...problems);
      const sql = 'SELECT sha256, media_type, bytes FROM media WHERE book = ? ORDER BY sha256';
      return accept(rows(sql, book).map(entryOf));
    },
    readMedia: async (book, sha256, part) => {
      const entry = known(book, sha256);
      if (entry === undefined) return unknown(book, sha256);
      const from = part?.from ?? 0;
      const to = Math.min(part?.to ?? entry.bytes, entry.bytes);
      const content = await files.read(entry, from, to);
      return content === undefined
        ? refuse(storeProblem('STORE_MEDIA_GONE', '/sha256', { given: sha256 }))
        : accept({ ...entry, content });
    },
  };
};
