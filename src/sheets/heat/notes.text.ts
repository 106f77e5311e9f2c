/** Sentences that more than one sheet of heat says, in English. */
const notes = {
  CAUTION_HOT_WATER:
    'Hot water scalds and a heater that runs dry burns: level interlock, temperature limiter and guards follow the local code and a competent person. The figure advises only.',
  CAUTION_STEAM:
    'Steam is pressure equipment and burns unseen: pipe, trap, relief and test follow the local pressure code and a licensed person. The figure advises only.',
  HEAT_LOSSES_LEFT_OUT: 'No loss is given: the true bath takes longer and wants more.',
  MATERIAL_FROM_MEMORY: 'The specific heat of this material is from memory, not confirmed in a source.',
  OPEN_TANK_ROUGH:
    'A rough estimate: good to about 20 % and no better. Air that moves and a cover change it most.',
  EVAPORATION_TO_ROOM: 'What evaporates becomes damp in the room unless it is drawn off above the bath.',
} as const;

/** Sentences of problems that more than one sheet of heat finds. */
const problems = {
  HEAT_NO_RISE: '{path}: "{given}" is not above the temperature at first. Allowed: {allowed}.',
  HEAT_NO_FALL: '{path}: "{given}" is not below the temperature at which it comes in. Allowed: {allowed}.',
  STEAM_NOT_HOTTER:
    '{path}: the steam condenses at or below this temperature and gives it no heat. Allowed: {allowed}.',
} as const;

export const notesOf = (...codes: readonly (keyof typeof notes)[]): Readonly<Record<string, string>> =>
  Object.fromEntries(codes.map((code) => [code, notes[code]]));

export const problemsOf = (...codes: readonly (keyof typeof problems)[]): Readonly<Record<string, string>> =>
  Object.fromEntries(codes.map((code) => [code, problems[code]]));
