import type { SheetText } from '../sheet-text.ts';
import { lineProblems } from './lane-line-words.text.ts';

export const lineLackOfFitText: SheetText = {
  en: {
    title: "Is a lane's line straight?",
    about: 'Lack of fit of a straight line against the scatter of fills repeated at one preset.',
    inputs: {
      counts: 'Preset of each fill',
      volumes: 'Volume of each fill',
      confidence: 'Confidence of the test',
    },
    outputs: {
      ratio: 'Lack of fit over scatter of repeats (F)',
      ratioNeeded: 'F at which a curve is shown',
      chance: 'Chance of such an F on a straight line',
      repeatSpread: 'Standard deviation of repeats',
    },
    notes: {
      FIT_CURVED:
        'The fills do not lie on a straight line: the flow of short and long fills differs, or one group is off.',
    },
    problems: {
      ...lineProblems,
      FIT_FEW_PRESETS: '{path}: {given} different presets; a curve needs {allowed} or more to show.',
      FIT_NO_REPEATS:
        '{path}: no preset was filled twice with a difference, so that nothing says how fills scatter.',
    },
  },
};
