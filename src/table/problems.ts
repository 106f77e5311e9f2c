/** Every problem of a file that should be a table, and what its sentence needs beside the path. */
export const tableProblems = {
  /** More bytes than are read. */
  TABLE_TOO_LARGE: ['given', 'allowed'],
  /** Neither text nor a spreadsheet. */
  TABLE_NOT_TEXT: [],
  /** Bytes that are no letters in the encoding that a person named. */
  TABLE_NOT_IN_ENCODING: ['given'],
  /** A quoted cell that never ends. */
  TABLE_QUOTE_OPEN: ['row'],
  /** More rows, columns or cells than a table may have. */
  TABLE_TOO_MANY_CELLS: ['given', 'allowed'],
  /** The older binary form, or a spreadsheet under a password: both look alike from outside. */
  TABLE_OLD_OR_LOCKED: [],
  /** A zip archive, but no spreadsheet of ECMA-376. */
  TABLE_NOT_XLSX: ['allowed'],
  TABLE_ZIP_BROKEN: [],
  TABLE_ZIP_ENTRIES: ['given', 'allowed'],
  /** A name in the archive that leads out of it, or stands twice. */
  TABLE_ZIP_NAME: ['given'],
  /** Unpacked it would be too large, in bytes. */
  TABLE_ZIP_UNPACKED: ['given', 'allowed'],
  /** It would unpack to more times its size than any spreadsheet does. */
  TABLE_ZIP_RATIO: ['given', 'allowed'],
  /** Encrypted, split, or packed in another way. */
  TABLE_ZIP_METHOD: ['given'],
  TABLE_XML_BROKEN: [],
  /** A document type, which could pull in other files or grow without end. */
  TABLE_XML_DOCTYPE: [],
} as const satisfies Readonly<Record<string, readonly string[]>>;

export type TableProblemCode = keyof typeof tableProblems;
