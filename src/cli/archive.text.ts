import type { Bundle } from '../text/index.ts';

/** Words of a book as one file. */
export const archiveText: Bundle = {
  en: {
    'command.archive': 'a whole book with its records and pictures as one file, out or in',
    'option.archive.out': 'where the archive is written; the operand names the book',
    'option.archive.in': 'an archive to take in: the union of it and what is here',
    'option.archive.data': 'the folder that keeps the books; that of the program where it is left out',

    'archive.written':
      '{path} was written: book {book}, {revisions, plural, one {# revision} other {# revisions}}, {records, plural, =0 {no record} one {# record} other {# records}}, {media, plural, =0 {no file} one {# file} other {# files}}.',
    'archive.digest': 'Its manifest has the digest {sha256}: tell it to the other party by another way.',
    'archive.taken': 'Book {book} was taken in.',
    'archive.row.revisions': 'revisions: {added} new, {known} known, {aside} kept aside',
    'archive.row.records': 'records: {added} new, {known} known',
    'archive.row.media': 'files: {added} new, {known} known',
    'archive.aside': 'Kept aside: revision {n} by {author}, saved {savedAt}, {sha256}.',
    'archive.aside.said.aside': '  {by} said at {at} that it holds: {why}',
    'archive.aside.said.other': '  {by} said at {at} that the one which stands under its number holds: {why}',
    'archive.aside.say': 'Which holds is said on the page, at Before and after.',
    'archive.direction': 'a book and --out FILE, or --in FILE',
  },
};
