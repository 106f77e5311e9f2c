/** Words of the problems that the frame finds, whatever the sheet. */
export const sheetProblemText = {
  en: {
    SHEET_CHOICE: '{path}: {given} is not a choice here. Accepted: {allowed}.',
    SHEET_LIST: '{path}: a list of numbers is asked.',
    SHEET_LIST_SHORT: '{path}: the list is too short. At least {allowed} are asked.',
    SHEET_LIST_LONG: '{path}: the list is too long. At most {allowed} are taken.',
    SHEET_LIST_LENGTH: '{path}: {given} values, but {like} has {allowed}. Both lists belong together.',
    SHEET_NUMBER: '{path}: {given} is not a finite number.',
    SHEET_RANGE: '{path}: {given} is out of range. Accepted: {allowed}.',
    SHEET_INPUT_UNKNOWN: '{path} is not an input of this sheet. Its inputs: {allowed}.',
    SHEET_INPUT_MISSING: '{path} is missing.',
    SHEET_NOT_COMPUTABLE:
      '{path} cannot be computed from these numbers: they are too large or too small together.',
  },
} as const;
