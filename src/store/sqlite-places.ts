import { type ChainEnd, chainAfter } from '../record/clocked.ts';
import type { Envelope } from '../record/envelope.ts';
import { namesSource, triedIn } from '../record/standing.ts';
import { bytesOf } from './revision-row.ts';
import type { Row, SqliteConnection } from './sqlite-driver.ts';

type Connection = Pick<SqliteConnection, 'rows' | 'run'>;

/** Columns of the end of a chain, which stand beside its last record. */
export const endOf = (row: Row): ChainEnd => ({
  book: String(row.book),
  writer: String(row.writer),
  sequence: Number(row.sequence),
  hash: String(row.hash),
  moment: Number(row.moment),
  claimed: String(row.claimed),
});

/** Enters where a record stands among the others, in the transaction that adds it: what counts is found without reading all. */
export const placeRecord = ({ rows, run }: Connection, position: number, record: Envelope): void => {
  const { book, id, writer, sequence, supersedes } = record;
  const [before] = rows(
    `SELECT r.book, r.writer, r.sequence, r.hash, p.moment, p.claimed FROM record AS r
      JOIN record_place AS p ON p.position = r.position
      WHERE r.book = ? AND r.writer = ? AND r.sequence = ?`,
    book,
    writer,
    sequence - 1,
  ).map(endOf);
  const { end, doubt } = chainAfter(before, record);
  const tried = triedIn(record);
  run(
    `INSERT INTO record_place (position, book, id, moment, claimed, tried, beside, supersedes, doubt)
      VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?)`,
    position,
    book,
    id,
    end.moment,
    end.claimed,
    tried ?? null,
    tried === undefined || namesSource(record) ? 1 : 0,
    supersedes ?? null,
    doubt === undefined ? 0 : 1,
  );
};

/** Records in one reading. */
const atOnce = 1000;

/** Places for the records of a file that was written before there were any. */
export const placeAll = (connection: Connection): void => {
  for (let after = 0; ; ) {
    const found = connection.rows(
      'SELECT position, envelope FROM record WHERE position > ? ORDER BY position LIMIT ?',
      after,
      atOnce,
    );
    for (const { position, envelope } of found) {
      after = Number(position);
      placeRecord(connection, after, JSON.parse(new TextDecoder().decode(bytesOf(envelope))) as Envelope);
    }
    if (found.length < atOnce) return;
  }
};
