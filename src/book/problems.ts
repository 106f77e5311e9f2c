/** Every problem of a book, and what its sentence needs beside the path. */
export const bookProblems = {
  /** More than the allowed size, in bytes. */
  BOOK_TOO_LARGE: ['given', 'allowed'],
  /** The text is no JSON; `allowed` is what could stand at that line and column. */
  BOOK_JSON_BROKEN: ['given', 'allowed', 'line', 'column'],
  /** Parts within parts beyond any book. */
  BOOK_TOO_DEEP: ['allowed'],
  /** A key that stands twice in one object. */
  BOOK_KEY_TWICE: ['given', 'line', 'column'],
  /** Data that JSON cannot hold. */
  BOOK_NOT_JSON: ['given'],
  /** Data without the version that marks a book. */
  BOOK_NOT_A_BOOK: ['given', 'allowed'],
  /** A version that this code does not know yet. */
  BOOK_FROM_FUTURE: ['given', 'allowed'],
  /** Something that the part must have. */
  BOOK_MISSING: ['allowed'],
  BOOK_WRONG_TYPE: ['given', 'allowed'],
  BOOK_NOT_ONE_OF: ['given', 'allowed'],
  /** A key that the part does not have; `allowed` are those that it has. */
  BOOK_UNKNOWN_KEY: ['given', 'allowed'],
  /** The same, where one that it has is near. */
  BOOK_UNKNOWN_KEY_NEAR: ['given', 'nearest'],
  BOOK_OUT_OF_RANGE: ['given', 'allowed'],
  /** A quantity that must be less than another of the same part. */
  BOOK_NOT_LESS: ['given', 'than', 'limit'],
  /** A quantity that must not be more than another of the same part. */
  BOOK_MORE_THAN: ['given', 'than', 'limit'],
  /** A name that is in no table, without the field that stands in for it. */
  BOOK_NOT_IN_TABLE: ['given', 'allowed', 'unless'],
  /** A tag on two things; `first` is the path of the other. */
  BOOK_TAG_TWICE: ['given', 'first'],
  /** A tag that stands on nothing; `by` is who refers to it. */
  BOOK_TAG_UNKNOWN: ['given', 'by'],
  BOOK_TAG_UNKNOWN_NEAR: ['given', 'by', 'nearest'],
  /** A tag of something else than can be meant. */
  BOOK_TAG_WRONG_THING: ['given', 'by', 'is', 'allowed'],
  /** What comes before runs in a circle. */
  BOOK_ORDER_CIRCLE: ['loop'],
  /** Said last where there are too many problems to list: how many were left out. */
  BOOK_FURTHER_PROBLEMS: ['given'],
  /** A patch to a place that the book does not have. */
  BOOK_PLACE_UNKNOWN: ['given'],
} as const satisfies Readonly<Record<string, readonly string[]>>;

export type BookProblemCode = keyof typeof bookProblems;
