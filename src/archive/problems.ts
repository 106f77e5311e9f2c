import type { Problem } from '../quantity/problem.ts';

/** Every problem of an archive, with the parts beside `path` that its words want. */
export const archiveProblems = {
  // refused: nothing of it was taken
  ARCHIVE_NOT_ZIP: [],
  ARCHIVE_TOO_LARGE: ['given', 'allowed'],
  ARCHIVE_NO_ROOM: ['given', 'allowed'],
  ARCHIVE_ENTRIES: ['given', 'allowed'],
  /** A name that leads out, stands twice, or is none of an archive's. */
  ARCHIVE_NAME: ['given'],
  ARCHIVE_METHOD: [],
  ARCHIVE_PART_LARGE: ['given', 'allowed'],
  /** It would unpack to more times its size than any text does. */
  ARCHIVE_RATIO: ['given', 'allowed'],
  ARCHIVE_PART_ABSENT: [],
  /** A part that the manifest does not name. */
  ARCHIVE_PART_UNLISTED: [],
  ARCHIVE_PART_BROKEN: [],
  ARCHIVE_MANIFEST: ['allowed'],
  ARCHIVE_FROM_FUTURE: ['given', 'allowed'],
  ARCHIVE_DIGEST: ['given', 'allowed'],
  ARCHIVE_OTHER_BOOK: ['given', 'allowed'],
  /** A file that is none of the sort that the manifest says; what is wrong with it follows. */
  ARCHIVE_MEDIA: ['given'],
  // told: the rest was taken
  ARCHIVE_REVISION_ASIDE: ['given', 'by', 'at'],
  ARCHIVE_RECORDS_APART: ['writer', 'sequence', 'given', 'allowed'],
  ARCHIVE_RECORDS_REFUSED: ['writer', 'code'],
  ARCHIVE_MEDIA_ABSENT: ['given'],
  ARCHIVE_CLOCK_BACK: ['writer', 'sequence', 'given', 'before'],
} as const satisfies Record<string, readonly string[]>;

export type ArchiveProblemCode = keyof typeof archiveProblems;

/** A problem of this folder; the type keeps the code among the listed ones. */
export const archiveProblem = (
  code: ArchiveProblemCode,
  path: string,
  rest: Omit<Problem, 'code' | 'path'> = {},
): Problem => ({ code, path, ...rest });
