import type { RecordProblemCode } from './problems.ts';

/** What happened and what to do, by language. */
export const recordProblemText: { readonly en: Readonly<Record<RecordProblemCode, string>> } = {
  en: {
    RECORD_NOT_JSON: '{path} holds {given}, which a record cannot hold. Allowed: {allowed}.',
    RECORD_TEXT_BROKEN: 'The text at {path} holds half a character. Type it again.',
    RECORD_TOO_DEEP: '{path} is nested too deeply. At most {allowed} levels are kept.',
    RECORD_TOO_LARGE:
      'The record at {path} takes {given} bytes; at most {allowed} are kept. Attach large content as a file.',
    RECORD_MALFORMED: '{path} is not a record. Expected: {allowed}.',
    RECORD_KIND_UNKNOWN:
      'No record of kind {given} is known to this version. Known: {allowed}. It may come from a newer version.',
    RECORD_BODY: '{path} is missing or of the wrong form. Expected: {allowed}.',
    RECORD_CHANGED:
      'Record {sequence} of {writer} was changed after it was written: its content does not give its hash. Ask the writer for the original.',
    RECORD_DROPPED:
      'Records {first} to {last} of {writer} are missing. Ask the writer for the whole set of records.',
    RECORD_CHAIN_BROKEN:
      'Record {sequence} of {writer} does not follow the one before it: one of the two was replaced. Ask the writer for the original.',
    RECORD_REORDERED: 'Record {sequence} of {writer} stands out of order. Export the records again.',
    RECORD_REPEATED: 'Record {sequence} of {writer} stands here twice. Export the records again.',
    RECORD_FORK:
      'Two different records claim number {sequence} of {writer}. One device was copied, or one record was rewritten: keep both and ask the writer.',
    RECORD_ID_TWICE: 'Two different records carry the id {given}. Keep both and ask their writers.',
    RECORD_TRUNCATED:
      'The records of {writer} end at number {last}, but number {head} was handed over before. Ask the writer for the rest.',
    RECORD_WRITER_MISSING:
      'No record of {writer} is here, but number {head} of them was handed over before. Ask the writer for all of them.',
    RECORD_HEAD_DIFFERS:
      'Record {sequence} of {writer} is not the one that was handed over before: the records were rewritten. Compare with the copy of the other party.',
    RECORD_HEAD_OF_OTHER_BOOK:
      'What was handed over of {writer} belongs to book {given}, not to {allowed}. Hold the records against an export of their own book.',
    RECORD_WRONG_BOOK: 'The record at {path} belongs to book {given}, not to {allowed}. Import it there.',
    RECORD_SUPERSEDES_UNKNOWN:
      'The record at {path} replaces record {given}, which is not here. Import the records of the other writers too.',
    RECORD_SUPERSEDES_CYCLE: 'Record {given} replaces itself by way of others. None of them can count.',
    RECORD_SUPERSEDES_OTHER_KIND:
      'The record at {path} is a {given} that replaces a {allowed}. Only one of the same kind, or a note, may replace it.',
    RECORD_SIGNATURE_WRONG:
      'The signature of {by} was not made over what it now stands under. What was signed, or the signature, was changed: ask {by} for the copy.',
    RECORD_SIGNATURE_STRANGE:
      'The signature of {by} was made with key {given}, which is none of those that were given. Ask {by} for the public key by another way.',
    RECORD_REPLY_UNREADABLE:
      'This is not the reply to a witness file ({allowed}). Ask for the file that the page of the witness saved.',
    RECORD_REPLY_FROM_FUTURE:
      'This reply has version {given}; this program reads up to {allowed}. Use a newer version of the program.',
    RECORD_FILE_UNREADABLE: 'This is not a file of records. Expected: {allowed}.',
    RECORD_FILE_FROM_FUTURE:
      'This file of records has version {given}; this program reads up to {allowed}. Use a newer version of the program.',
    RECORD_FILE_SHORT:
      'The file promises {allowed} records and holds {given}. It was cut or lines were removed: export it again.',
    RECORD_LINE_UNREADABLE: 'Line {line} is not a record. The file was damaged or edited: export it again.',
    RECORD_LINE_NOT_CANONICAL:
      'Line {line} is not written as it was exported. The file was edited: export it again.',
    RECORD_LIST_UNREADABLE: 'This holds nothing of what was asked for. Expected: {allowed}.',
  },
};
