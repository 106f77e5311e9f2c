import type { SqliteConnection } from './sqlite-driver.ts';
import { placeAll } from './sqlite-places.ts';

/** One step of the tables, from the version before it. Never edited once released: a change is a new step. */
export interface Migration {
  readonly version: number;
  readonly name: string;
  readonly sql: string;
  /** What the new tables hold of what is there, in the same transaction. */
  readonly fill?: (connection: SqliteConnection) => void;
}

/**
 * Texts of books and records are blobs: the driver ends a text at its first NUL, and what was saved must
 * come back byte for byte.
 */
const tables = `
  CREATE TABLE book (
    id TEXT NOT NULL PRIMARY KEY
  ) STRICT;
  CREATE TABLE revision (
    book     TEXT    NOT NULL REFERENCES book (id),
    number   INTEGER NOT NULL CHECK (number >= 1),
    text     BLOB    NOT NULL,
    sha256   TEXT    NOT NULL CHECK (length(sha256) = 64),
    author   TEXT    NOT NULL,
    reason   TEXT,
    saved_at TEXT    NOT NULL,
    based_on INTEGER,
    PRIMARY KEY (book, number)
  ) STRICT;
  CREATE TABLE record (
    position INTEGER NOT NULL PRIMARY KEY,
    book     TEXT    NOT NULL REFERENCES book (id),
    id       TEXT    NOT NULL,
    writer   TEXT    NOT NULL,
    sequence INTEGER NOT NULL CHECK (sequence >= 0),
    previous TEXT    NOT NULL CHECK (length(previous) = 64),
    hash     TEXT    NOT NULL CHECK (length(hash) = 64),
    envelope BLOB    NOT NULL,
    UNIQUE (book, id),
    UNIQUE (book, writer, sequence)
  ) STRICT;
  CREATE INDEX record_of_book ON record (book, position);
`;

/**
 * The tables themselves refuse what the program never does, so that no later code and no other tool does it
 * by mistake: nothing is changed or removed, REPLACE included, and each row follows the one before it.
 */
const appendOnly = `
  CREATE TRIGGER book_unchanged BEFORE UPDATE ON book BEGIN SELECT RAISE(ABORT, 'books are only added'); END;
  CREATE TRIGGER book_kept BEFORE DELETE ON book BEGIN SELECT RAISE(ABORT, 'books are only added'); END;
  CREATE TRIGGER book_not_replaced BEFORE INSERT ON book
    WHEN EXISTS (SELECT 1 FROM book WHERE id = NEW.id)
    BEGIN SELECT RAISE(ABORT, 'books are only added'); END;

  CREATE TRIGGER revision_unchanged BEFORE UPDATE ON revision
    BEGIN SELECT RAISE(ABORT, 'revisions are only added'); END;
  CREATE TRIGGER revision_kept BEFORE DELETE ON revision
    BEGIN SELECT RAISE(ABORT, 'revisions are only added'); END;
  CREATE TRIGGER revision_follows BEFORE INSERT ON revision
    WHEN NEW.number <> 1 + coalesce((SELECT max(number) FROM revision WHERE book = NEW.book), 0)
      OR NEW.based_on IS NOT nullif(NEW.number - 1, 0)
    BEGIN SELECT RAISE(ABORT, 'a revision follows the latest'); END;

  CREATE TRIGGER record_unchanged BEFORE UPDATE ON record
    BEGIN SELECT RAISE(ABORT, 'records are only added'); END;
  CREATE TRIGGER record_kept BEFORE DELETE ON record
    BEGIN SELECT RAISE(ABORT, 'records are only added'); END;
  CREATE TRIGGER record_follows BEFORE INSERT ON record
    WHEN NEW.position <> 1 + coalesce((SELECT max(position) FROM record), 0)
      OR EXISTS (SELECT 1 FROM record WHERE book = NEW.book AND id = NEW.id)
      OR NEW.sequence <> 1 + coalesce(
        (SELECT max(sequence) FROM record WHERE book = NEW.book AND writer = NEW.writer), -1)
      OR NEW.previous <> coalesce(
        (SELECT hash FROM record WHERE book = NEW.book AND writer = NEW.writer AND sequence = NEW.sequence - 1),
        printf('%064d', 0))
    BEGIN SELECT RAISE(ABORT, 'a record follows the last of its writer'); END;
`;

/** The bytes stand in a folder beside the file, each under its digest. */
const media = `
  CREATE TABLE media (
    book       TEXT    NOT NULL REFERENCES book (id),
    sha256     TEXT    NOT NULL CHECK (length(sha256) = 64),
    media_type TEXT    NOT NULL,
    bytes      INTEGER NOT NULL CHECK (bytes > 0),
    PRIMARY KEY (book, sha256)
  ) STRICT, WITHOUT ROWID;
  CREATE TRIGGER media_unchanged BEFORE UPDATE ON media BEGIN SELECT RAISE(ABORT, 'media are only added'); END;
  CREATE TRIGGER media_kept BEFORE DELETE ON media BEGIN SELECT RAISE(ABORT, 'media are only added'); END;
  CREATE TRIGGER media_not_replaced BEFORE INSERT ON media
    WHEN EXISTS (SELECT 1 FROM media WHERE book = NEW.book AND sha256 = NEW.sha256)
    BEGIN SELECT RAISE(ABORT, 'media are only added'); END;
`;

/** What another laptop saved under a number that is taken here: nothing of it is lost, and nothing here is changed. */
const aside = `
  CREATE TABLE revision_aside (
    book     TEXT    NOT NULL REFERENCES book (id),
    number   INTEGER NOT NULL CHECK (number >= 1),
    text     BLOB    NOT NULL,
    sha256   TEXT    NOT NULL CHECK (length(sha256) = 64),
    author   TEXT    NOT NULL,
    reason   TEXT,
    saved_at TEXT    NOT NULL,
    follows  TEXT    CHECK (length(follows) = 64)
  ) STRICT;
  CREATE INDEX revision_aside_of_book ON revision_aside (book, number);
  CREATE TRIGGER revision_aside_unchanged BEFORE UPDATE ON revision_aside
    BEGIN SELECT RAISE(ABORT, 'revisions are only added'); END;
  CREATE TRIGGER revision_aside_kept BEFORE DELETE ON revision_aside
    BEGIN SELECT RAISE(ABORT, 'revisions are only added'); END;
`;

/**
 * Where each record stands among the others: when it was written as far as its chain can tell, and which check it tries.
 * It follows from the records, and could be made anew from them.
 */
const places = `
  CREATE TABLE record_place (
    position   INTEGER NOT NULL PRIMARY KEY REFERENCES record (position),
    book       TEXT    NOT NULL,
    id         TEXT    NOT NULL,
    moment     INTEGER NOT NULL,
    claimed    TEXT    NOT NULL,
    tried      TEXT,
    beside     INTEGER NOT NULL CHECK (beside IN (0, 1)),
    supersedes TEXT,
    doubt      INTEGER NOT NULL CHECK (doubt IN (0, 1))
  ) STRICT;
  CREATE INDEX record_place_tried ON record_place (book, tried, moment, id) WHERE tried IS NOT NULL;
  CREATE INDEX record_place_beside ON record_place (book, position) WHERE beside = 1;
  CREATE INDEX record_place_supersedes ON record_place (book, position) WHERE supersedes IS NOT NULL;
  CREATE INDEX record_place_doubt ON record_place (book, position) WHERE doubt = 1;
`;

export const migrations: readonly Migration[] = [
  { version: 1, name: 'books, revisions, records', sql: tables },
  { version: 2, name: 'rows are only added', sql: appendOnly },
  { version: 3, name: 'media', sql: media },
  { version: 4, name: 'revisions that came from elsewhere', sql: aside },
  { version: 5, name: 'where records stand', sql: places, fill: placeAll },
];

/** The version that this program writes. */
export const LATEST = migrations.at(-1)?.version ?? 0;
