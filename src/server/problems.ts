import type { Problem } from '../quantity/problem.ts';

/** Every problem that the server itself finds, with the parts beside `path` that its words want. */
export const serverProblems = {
  SERVER_HOST_FOREIGN: ['given', 'allowed'],
  SERVER_ORIGIN_FOREIGN: ['given', 'allowed'],
  SERVER_BODY_TOO_LARGE: ['allowed'],
  SERVER_BODY_NOT_JSON: [],
  SERVER_BODY_NOT_UNDERSTOOD: ['allowed'],
  /** A member of the request is absent or of the wrong form. */
  SERVER_REQUEST: ['allowed'],
  SERVER_NO_SUCH_PLACE: ['given'],
  /** A paper needs a floor to speak of. */
  SERVER_PAPER_NO_FLOOR: [],
  SERVER_FAULT: [],
  SERVER_PORT_TAKEN: ['given'],
  SERVER_PORT_DENIED: ['given'],
  SERVER_HOST_ABSENT: ['given'],
  SERVER_CANNOT_LISTEN: ['given', 'allowed'],
  SERVER_PAGES_ABSENT: ['given'],
  HALL_LAPTOP_ONLY: [],
  HALL_OPEN: [],
  HALL_CLOSED: [],
  HALL_NO_SUCH_ADDRESS: ['given'],
  HALL_PORT_TAKEN: ['given'],
  HALL_CANNOT_OPEN: ['given', 'allowed'],
  HALL_NO_CERTIFICATE: ['allowed'],
  HALL_CANNOT_KEEP: ['allowed'],
  HALL_NOT_JOINED: [],
  HALL_CODE_LETTERS: ['given', 'allowed'],
  HALL_CODE_LENGTH: ['given', 'allowed'],
  /** The check character shows that it is no code at all. */
  HALL_CODE_MISTYPED: [],
  HALL_CODE_WRONG: ['given'],
  /** Used, too late, or taken back: there is none to be guessed. */
  HALL_CODE_OVER: [],
  HALL_LOCKED: ['allowed'],
  HALL_NAME_ABSENT: [],
} as const satisfies Record<string, readonly string[]>;

export type ServerProblemCode = keyof typeof serverProblems;

/** A problem of this folder; the type keeps the code among the listed ones. */
export const serverProblem = (
  code: ServerProblemCode,
  path: string,
  rest: Omit<Problem, 'code' | 'path'> = {},
): Problem => ({ code, path, ...rest });
