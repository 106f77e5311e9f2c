/** Sentences that more than one sheet of safety says, in English. */
const notes = {
  CAUTION_GUARDING:
    'Check aid only: it judges no machine. The risk assessment, the validation and a competent person decide, by the local law and the edition of the standard that binds here.',
  DISTANCE_2010: 'Form of ISO 13855:2010. The edition of 2024 takes other terms and, in part, other figures.',
  DISTANCE_2024_SECOND_HAND:
    'Edition of 2024: its terms from memory, its figure from a public account, in part of the draft. Compare with the bought standard before anything is mounted by it.',
  DISTANCE_OTHER_WAYS:
    'Only for this way in. Reaching over, under, round and standing between field and danger are looked at apart.',
  DISTANCE_STOP_MEASURED:
    'Rests on a stop time that was measured here, at the worst speed, load, pressure and place; air and mains of another floor give another.',
  LEVEL_NOT_NUMBER_ALONE:
    'The number is one part: categories, common cause (65 points for 2, 3 and 4), software, systematic failures and validation belong to the level.',
  LIFETIME_UNDER_3: 'Under 3 years a channel is not allowed.',
} as const;

export const notesOf = (...codes: readonly (keyof typeof notes)[]): Readonly<Record<string, string>> =>
  Object.fromEntries(codes.map((code) => [code, notes[code]]));
