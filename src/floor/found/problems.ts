/** Every problem of a reading beside those of the book, and what its sentence needs beside the path. */
export const foundProblems = {
  READING_FLOOR_UNKNOWN: ['given', 'allowed'],
} as const satisfies Readonly<Record<string, readonly string[]>>;

export type FoundProblemCode = keyof typeof foundProblems;
