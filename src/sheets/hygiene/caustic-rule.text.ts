import type { SheetText } from '../sheet-text.ts';
import { notesOf } from './notes.text.ts';

export const causticRuleText: SheetText = {
  en: {
    title: 'Caustic wash against a code',
    about:
      'Whether strength, time and temperature of the caustic wash of returnable glass meet the public code that was chosen.',
    inputs: {
      rule: 'Code',
      caustic: 'Free sodium hydroxide',
      alkali: 'All alkali together',
      time: 'Shortest time in the caustic',
      temperature: 'Temperature at the coldest place',
    },
    outputs: {
      verdict: 'Against the code chosen',
      leastCaustic: 'Sodium hydroxide that it asks',
      leastAlkali: 'Alkali that it asks',
      leastCausticShare: 'Sodium hydroxide as a share of the alkali that it asks',
      leastTime: 'Time that it asks',
      leastTemperature: 'Temperature that it asks',
    },
    notes: {
      ...notesOf('HYGIENE_AUTHORITY', 'CAUTION_CHEMICAL', 'CAUTION_SCALD', 'RULE_TRANSCRIBED'),
      CAUSTIC_CODES_DIFFER:
        'Codes disagree: Oregon 3 % for 5 min at 130 °F, Connecticut 3.5 % alkali with 60 % of it caustic, 5 min at 120 °F, California 2.5 % for 5 min at 120 °F, Maine 3 % at 110 °F.',
      CAUSTIC_TABLE_DISAGREES:
        'Against the trade table of equal effect (from memory) California is weaker (2.5 % where it has 3.2 % at 120 °F for 5 min) and Oregon stronger (3 % where it has 2.2 % at 130 °F).',
      CAUSTIC_OR_EQUIVALENT:
        'Oregon takes an equivalent process as well: which one is for the authority to say. It also asks a thermometer at the washer and a caustic test kit.',
      CAUSTIC_REPEALED: 'Repealed in 2008: of historical interest.',
      CAUSTIC_TEXT_CUT: 'The copy that was read breaks off after the strength: the rest is unknown.',
      CAUSTIC_NOT_ALL_STATED:
        'Time, temperature or both are not stated in what was read: the verdict does not cover them.',
      CAUSTIC_BY_WEIGHT:
        'The codes do not say whether by weight or by volume. A titration gives grams in 100 mL, which at 2 to 3 % is 2 to 3 % more than by weight (memory).',
    },
    problems: {
      CAUSTIC_NO_FIGURES:
        '{path}: {given} states no figures, its commission sets them: ask there. With figures: {allowed}.',
      CAUSTIC_OVER_ALKALI: '{path}: more caustic than alkali altogether cannot be.',
    },
    options: {
      rule: {
        'OR 603-021-0720': 'OAR 603-021-0720, Oregon',
        'CT 21a-142': 'General Statutes 21a-142, Connecticut',
        'CA HSC 112080': 'Health and Safety Code 112080, California',
        'ME 32-1854': 'Title 32, 1854, Maine',
        'VA 3.1-382': 'Code 3.1-382, Virginia, repealed 2008',
        'OH 913.27': 'Revised Code 913.27, Ohio, read in part',
        'NV 584.2511': 'Administrative Code 584.2511, Nevada, no figures',
      },
      verdict: { meets: 'meets', 'does not meet': 'does not meet' },
    },
  },
};
