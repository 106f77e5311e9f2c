import type { CheckSentences } from '../../proof/index.ts';
import { useProof } from './with-proof.tsx';

/** What is said of the checks of the open book, in the words and units of the reader. */
export const useCheckSays = (): CheckSentences => useProof().says;
