/** Every problem of a question sheet that comes back, and what its sentence needs beside the path. */
export const answerProblems = {
  ANSWER_NO_HEADER: [],
  /** A row that holds something and names no place. */
  ANSWER_NO_ID: ['given'],
  ANSWER_ID_UNKNOWN: ['given'],
  /** `rows` names them all. */
  ANSWER_TWICE: ['rows'],
  /** The question of another id: columns were sorted apart. */
  ANSWER_TORN: ['given'],
  /** The answer has another unit than its cell, which somebody chose. */
  ANSWER_TWO_UNITS: ['given', 'unit'],
  ANSWER_UNIT_NOT_ASKED: ['given', 'unit'],
  ANSWER_NOT_A_CHOICE: ['given', 'allowed'],
  ANSWER_NOT_A_NUMBER: ['given'],
  ANSWER_DAY: ['given', 'allowed'],
} as const satisfies Readonly<Record<string, readonly string[]>>;

export type AnswerProblemCode = keyof typeof answerProblems;
