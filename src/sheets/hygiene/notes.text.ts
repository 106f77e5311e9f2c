/** Sentences that more than one sheet of hygiene says, in English. */
const notes = {
  HYGIENE_AUTHORITY:
    'Advice only: the local health authority, the licensed processor and the label of the chemical decide what is enough.',
  CAUTION_CHEMICAL:
    'Caustic and chlorine burn skin and eyes, and hypochlorite with acid gives off chlorine gas: label, data sheet, protective gear, ventilation and an eyewash come first, handled by trained people under the local code.',
  CAUTION_SCALD:
    'Hot water and steam scald, and glass cracks on a step of temperature: guard, drain and cool before anybody opens anything.',
  CONTACT_SHORT: 'Less contact than asked at this index.',
  CONTACT_DEAD_TIME:
    'Dead time is transfer, opening of the valve and settling of the jet, measured at the bottle: a spray that is off gives no contact, however long the bottle stays.',
  CT_NOT_FOR_RINSE:
    'CT tables are for germs that float in clear water with up to 3 mg/L of chlorine. They say nothing of soil or slime on a bottle wall and do not stretch to a sanitising rinse of 50 to 200 mg/L: what is judged there is the rule.',
  CT_CHLORINE_HIGH: 'Over 3 mg/L of chlorine: the row of 3 mg/L is used, the last that is printed.',
  CT_CHLORINE_LOW: 'Under 0.4 mg/L of chlorine: the row of 0.4 mg/L is used, the first that is printed.',
  CT_WARM: 'Warmer than 25 °C: the column of 25 °C is used; nothing is gained from more heat.',
  CT_COLD: 'Colder than 0.5 °C: the table of 0.5 °C or lower is used.',
  CT_PH_LOW: 'Under pH 6: the column of pH 6 or lower is used.',
  CT_INTERPOLATED:
    'Between the printed figures on a straight line; the cautious look-up takes the colder, more alkaline, stronger one.',
  CT_RESIDUAL: 'The concentration is what is left at the end of the contact, not the dose.',
  LETHALITY_COLDEST:
    'The temperature that counts is that of the coldest wetted place of the bottle, not that of the tank.',
  RULE_FROM_MEMORY: 'This text is known from memory, not confirmed: read it before anything rests on it.',
  RULE_TRANSCRIBED: 'Read in a public transcription; the edition in force may differ: ask the authority.',
  PERFECT_MIXING:
    'Counts on perfect mixing in every rinse. Sprays reach 0.3 to 0.8 of it (from memory): put that in as the share that mixes, or measure.',
  RINSE_NO_WATER: 'Without water nothing is diluted.',
  STEADY_AFTER_3: 'A sample in the first time constant looks clean and proves nothing: take it after three.',
  UNBUFFERED: 'Pure water. Real water is buffered, so its pH is lower, and a drain is judged by titration.',
  DILUTION_ADD_TO_WATER:
    'Add the chemical to the water, never water to the chemical, and keep acid and hypochlorite apart.',
  HYPOCHLORITE_WHICH_PERCENT:
    'Ask which per cent stands on the drum: 12.5 trade per cent at a density of 1.16 kg/L is 10.8 % available chlorine or 11.3 % sodium hypochlorite by weight.',
  CHLORINE_STRIP_TOTAL:
    'A chlorine strip reads hypochlorous acid and hypochlorite together: measure the pH with it.',
  WEIGH_TWENTY: 'What a bottle carries is measured: weigh twenty drained ones at the index that will run.',
} as const;

/** Sentences of problems that more than one sheet of hygiene finds. */
const problems = {
  HYGIENE_NOT_WHOLE: '{path}: {given} is not a whole number. Accepted: {allowed}.',
  TIMES_ASCEND: '{path}: every time must be later than the one before it.',
} as const;

type NoteCode = keyof typeof notes;
type ProblemCode = keyof typeof problems;

/** The sentences of some notes. */
export const notesOf = (...codes: readonly NoteCode[]): Readonly<Record<string, string>> =>
  Object.fromEntries(codes.map((code) => [code, notes[code]]));

/** The sentences of some problems. */
export const problemsOf = (...codes: readonly ProblemCode[]): Readonly<Record<string, string>> =>
  Object.fromEntries(codes.map((code) => [code, problems[code]]));

/** What the ends of the Giardia tables say. */
export const giardiaEndNotes = notesOf(
  'CT_CHLORINE_HIGH',
  'CT_CHLORINE_LOW',
  'CT_WARM',
  'CT_COLD',
  'CT_PH_LOW',
);

export const lookUpWords = {
  cautious: 'next printed figure that asks more',
  interpolated: 'straight between',
} as const;

/** Words of what every CT table gives. */
export const ctOutputs = {
  needed: 'CT that the logs ask',
  neededTime: 'Contact that the logs ask',
  ct: 'CT of this contact',
  ratio: 'CT over that of the table',
  reached: 'Logs that this contact reaches',
} as const;
