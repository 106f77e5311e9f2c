import { useMemo } from 'react';
import { type CheckSentences, checkSentences } from '../../proof/index.ts';
import { usePagePart, useWords } from '../state/page-context.ts';
import { useProof } from './with-proof.tsx';

/** What is said of the checks of the open book, in the words and units of the reader. */
export const useCheckSays = (): CheckSentences => {
  const { book } = useProof();
  const words = useWords();
  const units = usePagePart((state) => state.units);
  return useMemo(
    () =>
      checkSentences(book, {
        say: words.say,
        has: words.has,
        // a share is said in per cent
        quantity: (value, kind) =>
          kind === 'ratio' ? words.percent(value) : words.quantity(value, kind, { units, book }).text,
        number: (value) => words.number(value, 2),
      }),
    [book, words, units],
  );
};
