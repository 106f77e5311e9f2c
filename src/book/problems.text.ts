import type { BookProblemCode } from './problems.ts';

/** Words of the problems. `is` and `allowed` of a tag are things: what a tag stands on. */
export const bookProblemText: { readonly en: Readonly<Record<BookProblemCode, string>> } = {
  en: {
    BOOK_TOO_LARGE: 'The book is too large: {given} bytes, of which {allowed} are allowed.',
    BOOK_JSON_BROKEN:
      'The text breaks off being JSON at line {line}, column {column} (at "{path}"): found "{given}", expected {allowed}.',
    BOOK_TOO_DEEP: '{path}: more than {allowed} parts within each other; no book is that deep.',
    BOOK_KEY_TWICE:
      '{path}: the key "{given}" stands twice, again at line {line}, column {column}. Keep one of the two.',
    BOOK_NOT_JSON: '{path}: {given} cannot stand in a JSON file.',
    BOOK_NOT_A_BOOK:
      'This is no book: it has {given} where "twinfloor" with its version is expected ({allowed}).',
    BOOK_FROM_FUTURE:
      'The book has version {given}; this program reads up to version {allowed}. Open it with a newer one. Nothing was changed.',
    BOOK_MISSING: '{path} is missing. Expected: {allowed}.',
    BOOK_WRONG_TYPE: '{path}: {given} stands where {allowed} is expected.',
    BOOK_NOT_ONE_OF: '{path}: "{given}" is not one of: {allowed}.',
    BOOK_UNKNOWN_KEY: '{path}: there is no "{given}" here. There may be: {allowed}.',
    BOOK_UNKNOWN_KEY_NEAR: '{path}: there is no "{given}" here. Is "{nearest}" meant?',
    BOOK_OUT_OF_RANGE: '{path}: "{given}" cannot be. Allowed: {allowed}.',
    BOOK_NOT_LESS: '{path}: "{given}" must be less than {than}, which is "{limit}".',
    BOOK_MORE_THAN: '{path}: "{given}" must not be more than {than}, which is "{limit}".',
    BOOK_NOT_IN_TABLE: '{path}: "{given}" is in no table. Give {unless} for it, or one of: {allowed}.',
    BOOK_TAG_TWICE: '{path}: the tag "{given}" stands on something else already, at {first}.',
    BOOK_TAG_UNKNOWN: '{path}: {by} refers to "{given}", and nothing has that tag.',
    BOOK_TAG_UNKNOWN_NEAR:
      '{path}: {by} refers to "{given}", and nothing has that tag. Is "{nearest}" meant?',
    BOOK_TAG_WRONG_THING: '{path}: {by} refers to "{given}", which is a {is}; a {allowed} is expected.',
    BOOK_ORDER_CIRCLE: '{path}: what comes before runs in a circle: {loop}.',
    BOOK_FURTHER_PROBLEMS: 'There are at least {given} problems more than those that are listed.',
    BOOK_PLACE_UNKNOWN: '{path}: the book has no such place: "{given}" leads nowhere.',
  },
};
