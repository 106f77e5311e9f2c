import type { Problem } from '../quantity/problem.ts';

/** Every problem that the command line itself finds, with the parts beside `path` that its words want. */
export const cliProblems = {
  CLI_COMMAND_UNKNOWN: ['given', 'allowed'],
  CLI_COMMAND_NEAREST: ['given', 'allowed', 'nearest'],
  CLI_OPTION_UNKNOWN: ['given', 'allowed'],
  CLI_OPTION_NEAREST: ['given', 'nearest'],
  CLI_OPTION_WANTS_VALUE: ['given', 'allowed'],
  CLI_OPTION_TAKES_NONE: ['given'],
  CLI_OPTION_VALUE: ['given', 'allowed'],
  /** Options that mean nothing without another. */
  CLI_OPTION_WANTS_LIST: ['allowed'],
  CLI_OPERAND_MISSING: ['allowed'],
  CLI_OPERAND_TOO_MANY: ['given'],
  CLI_FILE_ABSENT: [],
  CLI_FILE_IS_FOLDER: [],
  CLI_FILE_DENIED: [],
  CLI_FILE_UNREADABLE: ['given'],
  CLI_FILE_TOO_LARGE: ['given', 'allowed'],
  CLI_FILE_NOT_TEXT: ['given', 'allowed'],
  CLI_FILE_EMPTY: ['allowed'],
  CLI_FOLDER_ABSENT: [],
  CLI_FILE_NOT_WRITTEN: ['given'],
  CLI_INPUT_TWICE: [],
  CLI_WRITE_NOWHERE: [],
  CLI_NOTHING_TAKEN: [],
  CLI_SHEET_UNKNOWN: ['given'],
  CLI_SHEET_FOUND: ['given', 'found'],
  CLI_SHEET_NEAREST: ['given', 'nearest'],
  CLI_SHEET_PAIR: ['given', 'allowed'],
  CLI_SHEET_TWICE: ['given'],
  CLI_LIST_COMMA: ['given'],
  CLI_FLOOR_UNKNOWN: ['given', 'allowed'],
  CLI_FORMAT_UNKNOWN: ['given', 'allowed'],
  CLI_BOOK_UNKNOWN: ['given', 'allowed'],
  CLI_NO_BOOKS: [],
  CLI_NO_FLOORS: [],
  CLI_NO_TEMPORARY: [],
  CLI_FAULT: ['given'],
} as const satisfies Record<string, readonly string[]>;

export type CliProblemCode = keyof typeof cliProblems;

/** A problem of this folder; the type keeps the code among the listed ones. */
export const cliProblem = (
  code: CliProblemCode,
  path: string,
  rest: Omit<Problem, 'code' | 'path'> = {},
): Problem => ({ code, path, ...rest });
