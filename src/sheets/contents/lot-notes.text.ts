/** Sentences that more than one sheet of lots says, in English. */
export const lotNotes = {
  RULE_AUTHORITY:
    'Worked out here to prepare and to show. Whether a lot may be sold is for the law of the place and its authority.',
  LOT_SURPLUS:
    'More packages were given than the plan takes: the first ones in their order were judged, the others were not looked at.',
  LOT_BARRED:
    'Packages short of more than twice the deficiency are among them: whatever the lot, these must not be sold under the rule.',
  UK_DEFICIENCY_MEMORY:
    'The table of tolerable deficiencies is recalled, not read: confirm it in schedule 3 of the regulations.',
} as const;

/** Problems that more than one sheet of lots finds. */
export const lotProblems = {
  LOT_NOT_WHOLE: '{path}: {given} is no whole number of packages.',
  LOT_MORE_THAN_LOT: '{path}: {given} packages were drawn from a lot of {allowed}.',
  LABEL_NOT_REACHED: '{path}: the table of {rule} that we hold does not reach this label.',
} as const;
