import type { Problem } from '../quantity/problem.ts';

/** Every problem of results against the checks that they are of, with the parts beside `path` that its words want. */
export const proofProblems = {
  /** No check of that floor has this id: the book has changed, or another was meant. */
  PROOF_CHECK_UNKNOWN: ['given', 'floor'],
  PROOF_FLOOR_UNKNOWN: ['given', 'allowed'],
  PROOF_WAIT_UNKNOWN: ['given', 'allowed'],
  /** A device's clock went back between two records of its chain. */
  PROOF_CLOCK_BACK: ['given', 'writer', 'before'],
  /** A try that names a run or lot which is not there, or answers another check. */
  PROOF_SOURCE_UNKNOWN: ['given'],
  PROOF_CONDITION_UNKNOWN: ['given', 'allowed'],
  /** A condition that is read as yes or no. */
  PROOF_CLAIM: ['given'],
  /** A resistance, time or mass below zero: a slip, or leads the wrong way round. */
  PROOF_READING_NEGATIVE: ['given'],
  /** The check wants readings and the record holds none. */
  PROOF_READINGS_ABSENT: ['allowed'],
  /** The check wants to be told whether it was as expected. */
  PROOF_SEEN_ABSENT: [],
  /** A stop that does not come can't be accepted as it is. */
  PROOF_NO_CONCESSION: [],
} as const satisfies Record<string, readonly string[]>;

export type ProofProblemCode = keyof typeof proofProblems;

/** A problem of this folder; the type keeps the code among the listed ones. */
export const proofProblem = (
  code: ProofProblemCode,
  path: string,
  rest: Omit<Problem, 'code' | 'path'> = {},
): Problem => ({ code, path, ...rest });
