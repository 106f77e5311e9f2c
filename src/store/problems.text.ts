import type { StoreProblemCode } from './problems.ts';

/** What happened and what to do, by language. */
export const storeProblemText: { readonly en: Readonly<Record<StoreProblemCode, string>> } = {
  en: {
    STORE_CONFLICT:
      'Someone else saved before you: the latest revision is {allowed}, yours follows {given}. Nothing was saved. Load the latest and make your change again.',
    STORE_RECORD_CONFLICT:
      'The record at {path} has hash {given}, but another one with hash {allowed} is stored in its place. Nothing was saved. One device was copied, or a record was rewritten: keep both and ask the writer.',
    STORE_BOOK_EXISTS: 'A book {given} is stored already. Nothing was saved. Open it, or choose another id.',
    STORE_BOOK_UNKNOWN: 'No book {given} is stored here. See the list of books.',
    STORE_REVISION_UNKNOWN: 'There is no revision {given}. Stored: {allowed}.',
    STORE_RECORD_GAP:
      'Record {given} came before those in front of it; next is {allowed}. Nothing was saved. Send the missing records first.',
    STORE_MEDIA_UNKNOWN: 'No file with the digest {given} is kept with this book.',
    STORE_MEDIA_GONE:
      'The file with the digest {given} belongs to this book but is not in the media folder any more. Send it again, or restore it from an archive of the book.',
    STORE_INPUT: '{path} cannot be stored. Expected: {allowed}. Nothing was saved.',
    STORE_READ_ONLY:
      'The data at {path} can be read but not written. Nothing was saved; what is stored is untouched. Give this user the right to write there, or choose another data folder.',
    STORE_FULL:
      'The disk that holds {path} is full. Nothing was saved; what is stored is untouched. Make room and try again.',
    STORE_BUSY:
      'Another program holds {path} for writing. Nothing was saved; what is stored is untouched. Try again, or close the other program.',
    STORE_CORRUPT:
      'The data at {path} is damaged. Nothing was written to it. Keep a copy of the file and of the files beside it, and restore from a backup or from an exported file of records.',
    STORE_FROM_FUTURE:
      'The data at {path} was written by a newer version of this program (format {given}, this one reads up to {allowed}). It is untouched. Use the newer version.',
    STORE_FOREIGN:
      'The file {path} is the data of another program. It is untouched. Choose another data folder.',
    STORE_NOT_DURABLE:
      'The data at {path} cannot be kept safe against a power cut there: {given} instead of {allowed}. It was not opened. Choose a folder on a local disk.',
    STORE_CANNOT_OPEN:
      'The data at {path} cannot be opened. It is untouched. Check that the folder exists, is a folder and is not held by another program.',
    STORE_CLOSED: 'The store at {path} is closed. Open it again.',
    STORE_FAILED:
      'The disk that holds {path} failed. The last change was not saved; what was acknowledged before is untouched. Check the disk.',
  },
};
