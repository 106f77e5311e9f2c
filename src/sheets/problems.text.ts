/** Words of the problems that `runSheet` finds in the inputs of a sheet. */
export const sheetProblemText = {
  en: {
    SHEET_CHOICE: '{path}: "{given}" is not one of: {allowed}.',
    SHEET_LIST: '{path}: "{given}" stands where several numbers are expected.',
    SHEET_LIST_SHORT: '{path}: too few values; at least {allowed} are needed.',
    SHEET_LIST_LONG: '{path}: too many values; at most {allowed} are taken.',
    SHEET_LIST_LENGTH: '{path}: {given} values, but {like} has {allowed}; both lists belong together.',
    SHEET_NUMBER: '{path}: "{given}" is not a number that can be computed with.',
    SHEET_OFF_TABLE:
      '{path}: "{given}" is not in the table, and nothing is put between its rows. Rows held: {allowed} ({table}).',
    SHEET_BEYOND_TABLE:
      '{path}: "{given}" lies beyond the table, and nothing is extrapolated. The table ends at: {allowed} ({table}).',
    SHEET_RANGE: '{path}: "{given}" cannot be. Allowed: {allowed}.',
    SHEET_INPUT_UNKNOWN: '{path} is no input of this sheet. It has: {allowed}.',
    SHEET_INPUT_MISSING: '{path} is missing.',
    SHEET_NOT_COMPUTABLE: '{path} has no finite value for these inputs.',
  },
} as const;
