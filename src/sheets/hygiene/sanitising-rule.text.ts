import type { SheetText } from '../sheet-text.ts';
import { notesOf } from './notes.text.ts';

export const sanitisingRuleText: SheetText = {
  en: {
    title: 'Sanitising against a rule',
    about:
      'Whether temperature, contact and strength meet the rule that was chosen, and each of its alternatives. The rule is never one of ours.',
    inputs: {
      rule: 'Rule',
      medium: 'Sanitised with',
      temperature: 'Temperature at the coldest place',
      time: 'Shortest contact',
      concentration: 'Available chlorine or ozone at the end of the contact',
      acidity: 'pH (14 where it was not measured)',
    },
    outputs: {
      verdict: 'Against the rule chosen',
      met: 'Each alternative: 1 met, 0 not met',
      leastTemperature: 'Temperature that the alternatives ask',
      leastTime: 'Contact that the alternatives ask',
      leastConcentration: 'Strength that the alternatives ask',
      mostAcidity: 'Highest pH, of those alternatives that state one',
    },
    notes: {
      ...notesOf(
        'HYGIENE_AUTHORITY',
        'CAUTION_CHEMICAL',
        'CAUTION_SCALD',
        'RULE_FROM_MEMORY',
        'RULE_TRANSCRIBED',
      ),
      RULE_FOR_TANKS_PIPES:
        'This row is about tanks and pipes. Of bottles the part that was read states nothing.',
      RULE_FOR_DAIRY: 'This row is about dairy farms, not about bottled water.',
      RULE_FOR_FOOD_SERVICE:
        'This row is about utensils in food service, not about bottled water; a contact that it may ask besides was not read.',
      RULE_TIME_NOT_STATED: 'No contact is stated in what was read: the verdict does not cover it.',
      RULE_TWO_POINTS:
        '170 °F for 15 min or 200 °F for 5 min are two alternatives, not the ends of a line: 180 °F for 10 min meets neither.',
      RULE_ENCLOSED: 'Meant in an enclosed space.',
      RULE_57_OR_75:
        'Sources disagree: the federal text (from memory) has 57 °F for chlorine, the New Jersey text 75 °F, although New Jersey elsewhere takes the federal rule by reference. Ask the authority which holds.',
      RULE_OZONE_5_OR_10:
        'Sources disagree: at 0.1 mg/L of ozone the federal text (from memory) and New Jersey ask 5 min, New York 10 min, Rhode Island states none for pipes.',
      RULE_HOT_WATER_5_OR_15:
        'Sources disagree: the bottled water texts ask 15 min at 170 °F, the Californian text for dairy farms 5 min.',
      RULE_PH_ASKED:
        'Two alternatives state a highest pH: 50 mg/L at 100 °F up to pH 10, and at 75 °F up to pH 8. Without a measured pH they are not met.',
      RULE_CHLORINE_MOST:
        'Over 200 mg/L of available chlorine: 40 CFR 180.940 (read second hand) allows no more on food contact surfaces that are only drained.',
      RULE_OZONE_MOST:
        'Over 0.4 mg/L of ozone: 21 CFR 184.1563, as a state text quotes it, is the most in water at bottling.',
      RULE_FINAL_RINSE:
        'A sanitiser that is not on the list of 21 CFR 178.1010 has to be rinsed off with disinfected water (from memory).',
      RULE_RECORD: 'The federal text asks a record of strength and contact (from memory).',
      RULE_COLDEST_PLACE:
        'Give the coldest place, the shortest contact at the fastest index and the weakest strength: what a tank thermometer shows is not what the base of a bottle gets.',
    },
    problems: {
      RULE_NO_ROW: '{path}: {rule} has no row for "{given}" in what was read. It has: {allowed}.',
    },
    options: {
      rule: {
        '21 CFR 129.80': '21 CFR 129.80(d), US federal, bottled water (from memory)',
        'NJ 8:21-5.8': 'N.J.A.C. 8:21-5.8, New Jersey, bottled water',
        'NY 10-5-6.8': '10 NYCRR 5-6.8, New York, bottled water',
        'RI 50-10-4.9': '216-RICR-50-10-4.9, Rhode Island, bottled water',
        'CA FAC 33519': 'Food and Agricultural Code 33519, California, dairy farms',
        'LA 51-X-117': 'Administrative Code 51, X-117, Louisiana, food service',
      },
      medium: {
        steam: 'steam',
        'steam jet': 'jet of steam, enclosed',
        'hot water': 'hot water',
        'hot air': 'hot air',
        'chlorine bath': 'chlorine, immersed or circulated',
        'chlorine spray': 'chlorine, spray or fog',
        'ozone water': 'ozone in water',
      },
      verdict: { meets: 'meets', 'does not meet': 'does not meet' },
    },
  },
};
