import type { JoinProblemCode } from './problems.ts';

/** What happened and what to do, by language. */
export const joinProblemText: { readonly en: Readonly<Record<JoinProblemCode, string>> } = {
  en: {
    JOIN_LIST_NO_HEADER:
      'No row of the list has headings that are known here. One of them must stand over an end: {allowed}. Name the columns in a file of columns.',
    JOIN_LIST_NO_ROWS: 'There is no row below the headings of the list.',
    JOIN_LIST_TAB_UNKNOWN: 'The file has no tab {given}. It has: {allowed}.',
    JOIN_LIST_MACROS:
      'The file holds a program (macros). It was not looked at; the cells were read as they stand.',
    JOIN_LIST_ENCODING:
      'The file does not say how its letters are written; they were read as {given}. Say another encoding where signs look odd.',
    JOIN_ROW_NO_END: 'Row {row} names neither of its ends.',
    JOIN_ROW_NO_KIND: 'Row {row} does not say what it is: {allowed}. Name the kind of the whole list.',
    JOIN_ROW_KIND: 'Row {row}: "{given}" is none of: {allowed}.',
    JOIN_ROW_TAG_TWICE: 'Row {row}: {given} stands in row {first} already.',
    JOIN_ROW_TAG_TAKEN: 'Row {row}: the book has {given} on something else than a join.',
    JOIN_ROW_FORMULA:
      'Row {row}, {column}: "{given}" is a formula without a result. Open the list, let it compute, save it.',
    JOIN_ROW_QUANTITY: 'Row {row}, {column}: "{given}" can’t be read with its unit.',
    JOIN_ROW_PLACE: 'Row {row}: the book has no {given}. It has: {allowed}.',
    JOIN_ROW_TOO_LONG: 'Row {row}, {column}: more than {allowed} letters.',
    JOIN_COLUMNS_UNREADABLE:
      'The file does not say what headings stand for. Expected: a JSON object of headings, each with one of {allowed}, or with nothing where it is passed over.',
    JOIN_UNKNOWN: 'A record is of {given}, and the book has no such join.',
  },
};
