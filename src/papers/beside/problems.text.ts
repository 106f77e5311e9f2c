import type { WordProblemCode } from './problems.ts';

export const wordProblemText: { readonly en: Readonly<Record<WordProblemCode, string>> } = {
  en: {
    WORDS_NO_COLUMNS:
      'The sheet has no column with the heading {allowed}. "twinfloor words" writes one that can be filled in.',
    WORDS_NONE: 'No row of the sheet has a translation.',
    WORDS_ENGLISH_UNKNOWN:
      'Row {row}: no paper says "{given}". Copy the English as "twinfloor words" writes it.',
    WORDS_ENGLISH_TWICE: 'Row {row}: "{given}" is translated another way in row {before}.',
    WORDS_BRACES: 'Row {row}: in "{given}" a brace is not opened or not closed.',
    WORDS_PARTS_MISSING: 'Row {row}: "{given}" leaves out {wanted}, where a name or number is put in.',
    WORDS_PARTS_UNKNOWN: 'Row {row}: nothing is put in for {wanted} of "{given}"; the English has {allowed}.',
    WORDS_PARTS_UNCOUNTED: 'Row {row}: "{given}" counts by {wanted}, which is no number in the English.',
    WORDS_PLURAL_OTHER:
      'Row {row}: a plural by {wanted} in "{given}" has no form "other", which every one needs.',
    WORDS_PLURAL_FORMS:
      'Row {row}: the language has no plural form {wanted}, as in "{given}". It has: {allowed}.',
  },
};
