import type { ArchiveProblemCode } from './problems.ts';

/** What happened and what to do, by language. */
export const archiveProblemText: { readonly en: Readonly<Record<ArchiveProblemCode, string>> } = {
  en: {
    ARCHIVE_NOT_ZIP:
      'This is no archive, or its end was cut off. Nothing was taken. Copy it again, or ask for it anew.',
    ARCHIVE_TOO_LARGE:
      'The archive has {given}; at most {allowed} are taken in by the page. Nothing was taken. Take it in with "twinfloor archive", or start the server with --largest-archive and a larger number.',
    ARCHIVE_NO_ROOM:
      'The archive wants {given} on the disk, of which {allowed} are free. Nothing was taken. Make room, then take it in again.',
    ARCHIVE_ENTRIES: 'The archive has {given} parts; at most {allowed} are read. Nothing was taken.',
    ARCHIVE_NAME:
      'The archive has a part called {given}, which no archive of a book has, or has twice. Nothing was taken. It was not made by this program, or was changed since.',
    ARCHIVE_METHOD: '{path} is packed or locked in a way that is not read. Nothing was taken.',
    ARCHIVE_PART_LARGE: '{path} has {given} bytes; at most {allowed} are read. Nothing was taken.',
    ARCHIVE_RATIO:
      '{path} would unpack to {given} times its size; at most {allowed} are unpacked. Nothing was taken.',
    ARCHIVE_PART_ABSENT: '{path} is not in the archive. Nothing was taken. Ask for the archive anew.',
    ARCHIVE_PART_UNLISTED:
      '{path} is in the archive, but its manifest does not name it. Nothing was taken. The archive was changed since it was made.',
    ARCHIVE_PART_BROKEN: '{path} can’t be read out of the archive. Nothing was taken. Copy it again.',
    ARCHIVE_MANIFEST: '{path} is missing or of the wrong form. Expected: {allowed}. Nothing was taken.',
    ARCHIVE_FROM_FUTURE:
      'The archive was written by a newer version of this program (form {given}, this one reads up to {allowed}). Nothing was taken. Use the newer version.',
    ARCHIVE_DIGEST:
      '{path} does not give its digest: {given} instead of {allowed}. Nothing was taken. The archive was changed or damaged since it was made.',
    ARCHIVE_OTHER_BOOK:
      'The archive is of book {given}, not of {allowed}. Nothing was taken. Take it in by itself.',
    ARCHIVE_MEDIA:
      '{path} is not what the archive says that it is, {given}. Nothing was taken. Ask whoever made the archive.',
    ARCHIVE_REVISION_ASIDE:
      'Revision {given}, saved by {by} at {at}, is another one than what stands here under that number: it is kept aside, and nothing here was changed. Compare the two, and say which holds.',
    ARCHIVE_RECORDS_APART:
      'Record {sequence} of {writer} is another one here ({allowed}) than in the archive ({given}): one device was copied, or a record was rewritten. From there on the archive’s were not taken. Keep the archive, and ask the writer.',
    ARCHIVE_RECORDS_REFUSED:
      'Records of {writer} were not taken ({code}): an id among them is in use here. Keep the archive, and ask the writer.',
    ARCHIVE_MEDIA_ABSENT:
      'A record names the file {given}, which is neither in the archive nor here. It may still wait in the browser that took it.',
    ARCHIVE_CLOCK_BACK:
      'The clock of {writer} was set back: record {sequence} says {given}, a record before it {before}. The order of the records holds; their times are in doubt.',
  },
};
