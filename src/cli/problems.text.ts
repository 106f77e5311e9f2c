import type { CliProblemCode } from './problems.ts';

/** What happened and what to do, by language. */
export const cliProblemText: { readonly en: Readonly<Record<CliProblemCode, string>> } = {
  en: {
    CLI_COMMAND_UNKNOWN: 'There is no command {given}. There are: {allowed}.',
    CLI_COMMAND_NEAREST: 'There is no command {given}. Did you mean {nearest}? There are: {allowed}.',
    CLI_OPTION_UNKNOWN: '{path} has no option {given}. It has: {allowed}.',
    CLI_OPTION_NEAREST: '{path} has no option {given}. Did you mean {nearest}?',
    CLI_OPTION_WANTS_VALUE: 'The option {given} wants a value after it: {allowed}.',
    CLI_OPTION_TAKES_NONE: 'The option {given} takes no value.',
    CLI_OPTION_VALUE: 'The option {path} was given {given}; it takes {allowed}.',
    CLI_OPTION_WANTS_LIST: 'The option {path} is of a list: give {allowed} with it.',
    CLI_OPERAND_MISSING: '{path} wants {allowed} after it.',
    CLI_OPERAND_TOO_MANY: '{path} does not know what to do with {given}.',
    CLI_FILE_ABSENT: 'There is no file {path}.',
    CLI_FILE_IS_FOLDER: '{path} is a folder; the name of a file is wanted.',
    CLI_FILE_DENIED: 'This account may not read {path}.',
    CLI_FILE_UNREADABLE: '{path} could not be read: {given}.',
    CLI_FILE_TOO_LARGE: '{path} holds {given}; at most {allowed} of such a file are read.',
    CLI_FILE_NOT_TEXT: '{path} is not text: {given}. Expected: {allowed}.',
    CLI_FILE_EMPTY: '{path} is empty. Expected: {allowed}.',
    CLI_FOLDER_ABSENT: 'The folder of {path} does not exist.',
    CLI_FILE_NOT_WRITTEN: '{path} could not be written: {given}.',
    CLI_INPUT_TWICE: 'Standard input can be read once only: give the book or the sheet as a file.',
    CLI_WRITE_NOWHERE:
      'A book from standard input has no file to be written into. Give its file, or leave out --write.',
    CLI_NOTHING_TAKEN: 'Nothing was taken from the sheet, so {path} was not changed.',
    CLI_SHEET_UNKNOWN: 'There is no sheet {given}. "twinfloor sheet" lists them.',
    CLI_SHEET_FOUND:
      'There is no sheet {given}, but these speak of it: {found}. "twinfloor sheet" lists all.',
    CLI_SHEET_NEAREST: 'There is no sheet {given}. Did you mean {nearest}? "twinfloor sheet" lists them.',
    CLI_SHEET_PAIR:
      '{given} is not an input. Write the name, an equals sign and the value, such as {allowed}.',
    CLI_SHEET_TWICE: '{path} was given twice, the second time as {given}. It is one value, not a list.',
    CLI_LIST_COMMA:
      '{path} was given {given}, where the comma may part two values or mark a decimal. Part the values of a list with a semicolon.',
    CLI_FLOOR_UNKNOWN: 'The book has no floor {given}. It has: {allowed}.',
    CLI_FORMAT_UNKNOWN: 'The book has no format {given}. It has: {allowed}.',
    CLI_BOOK_UNKNOWN: 'No book {given} is stored in {path}. There are: {allowed}.',
    CLI_NO_BOOKS: 'No book is stored in {path}. Give the folder that keeps them by --data.',
    CLI_NO_FLOORS: '{path} describes no floor yet, so there is nothing to assess.',
    CLI_NO_TEMPORARY:
      'No floor that was asked for has a temporary supply, so there is nothing to assess on it. Write it into the book, or leave out {path}.',
    CLI_FAULT: 'Twinfloor made a mistake of its own: {given}. The book was not changed.',
  },
};
