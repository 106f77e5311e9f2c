import type { FoundProblemCode } from './problems.ts';

/** What happened and what to do, by language. */
export const foundProblemText: { readonly en: Readonly<Record<FoundProblemCode, string>> } = {
  en: {
    READING_FLOOR_UNKNOWN:
      'The book has no floor {given}, so what was read of {path} fits nowhere. It has: {allowed}.',
  },
};
