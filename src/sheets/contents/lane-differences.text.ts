import type { SheetText } from '../sheet-text.ts';

export const laneDifferencesText: SheetText = {
  en: {
    title: 'Do the lanes differ?',
    about: 'Differences between lanes against the scatter of their fills.',
    inputs: {
      lanes: 'Lane of each fill',
      values: 'Contents of each fill',
      confidence: 'Confidence of the test',
    },
    outputs: {
      means: 'Mean, each lane by its number',
      repeatSpread: 'Standard deviation of repeats in a lane',
      laneSpread: 'Standard deviation between lanes',
      ratio: 'Between lanes over within (F)',
      ratioNeeded: 'F at which a difference is shown',
      chance: 'Chance of such an F with lanes alike',
    },
    notes: {
      LANES_DIFFER: 'The lanes differ: set each by its own preset.',
      LANES_ALIKE: 'No difference is shown; a small one may still be hidden in the scatter.',
    },
    problems: {
      LANES_ONE: '{path}: all fills are of lane {given}; at least two lanes are compared.',
      LANES_NO_REPEATS: '{path}: no lane was filled twice, so that nothing says how fills scatter.',
      LANES_NO_SCATTER: '{path}: the fills of a lane do not vary at all.',
    },
  },
};
