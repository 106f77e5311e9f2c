/** Words of what must be known with the control of a run, and of what cannot be. */
export const lotControlText = {
  en: {
    RUN_VOLUME: '{path}: {given} cannot be the contents of a bottle. Allowed: {allowed}.',
    RUN_NO_LANES:
      'No lanes are named: bottles of different lanes stand in one series, and a difference of lanes looks like spread.',
    RUN_TARGET_OWN:
      'What the lanes were set for is not known: the run was held against its own mean, which hides a slow drift.',
    RUN_SPREAD_OWN: 'The spread as accepted is not known: it was taken from neighbours in the run.',
    RUN_FEW: 'Lane {path}: {given} bottles say too little. At least {allowed}.',
  },
} as const;
