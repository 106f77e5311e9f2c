import type { ProofProblemCode } from './problems.ts';

/** What happened and what to do, by language. */
export const proofProblemText: { readonly en: Readonly<Record<ProofProblemCode, string>> } = {
  en: {
    PROOF_CHECK_UNKNOWN:
      'Floor {floor} has no check {given}. The book may have changed since: look whether the thing has another tag now.',
    PROOF_FLOOR_UNKNOWN: 'The book has no floor {given}. Known: {allowed}.',
    PROOF_WAIT_UNKNOWN:
      'The book waits for nothing named {given}. Known: {allowed}. The record is kept and counts nowhere.',
    PROOF_CLOCK_BACK:
      'The clock of {writer} went back: a record of {given} follows one of {before}. Its own records count in the order in which they were written; look which of the two moments is wrong before anything hangs on it.',
    PROOF_SOURCE_UNKNOWN:
      'No run or lot {given} answers this check on this floor. Import the records of the other devices, or name another.',
    PROOF_CONDITION_UNKNOWN: 'The check has no condition {given}. Known: {allowed}.',
    PROOF_CLAIM: '{path} says {given}. Expected: yes or no.',
    PROOF_READING_NEGATIVE:
      '{given} is below zero, where such a reading can’t be: it does not count. Look at the sign, and at the leads.',
    PROOF_READINGS_ABSENT: 'The check wants readings ({allowed}), and the record holds none.',
    PROOF_SEEN_ABSENT: 'The record does not say whether it was as the check expects.',
    PROOF_NO_CONCESSION:
      'A stop, a guard or a start that is not as it must be can’t be accepted as it is: it stays failed until it is put right and tried again.',
  },
};
