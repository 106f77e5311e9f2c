import type { Problem } from '../../quantity/problem.ts';
import { choiceField, listField, numberField } from '../fields.ts';
import { defineSheet, type Limit } from '../frame.ts';
import { acidities, disinfectants, temperatures, times } from './bounds.ts';
import { always, authority } from './caution.ts';
import { reaches, staysWithin } from './meets.ts';
import {
  mediaOfRule,
  type SanitisedObject,
  type SanitisingAlternative,
  type SanitisingMedium,
  type SanitisingRuleKey,
  sanitisingAlternatives,
  sanitisingMedia,
  sanitisingRuleKeys,
  sanitisingRuleSources,
} from './sanitising-rules.ts';

/** Only ever of the profile that was chosen; whether it is clean is for the authority to say. */
export type RuleVerdict = 'meets' | 'does not meet';

/** What a surface really gets, at its coldest and weakest place. */
export interface SanitisingGiven {
  readonly temperature: number;
  readonly time: number;
  readonly concentration: number;
  readonly acidity: number;
}

/**
 * Whether one alternative of a rule is met.
 *
 * Method   every stated figure is kept; nothing is traded between them
 * Symbols  given  what the coldest, weakest place gets: K, s, kg/m3, pH
 * Returns  true or false
 * Cost     O(1)
 * Source   the rule that the alternative is from
 */
export const meetsAlternative = (alternative: SanitisingAlternative, given: SanitisingGiven): boolean =>
  reaches(given.temperature, alternative.leastTemperature) &&
  reaches(given.time, alternative.leastTime) &&
  reaches(given.concentration, alternative.leastConcentration) &&
  staysWithin(given.acidity, alternative.mostAcidity);

interface SanitisingInputs extends SanitisingGiven {
  readonly rule: SanitisingRuleKey;
  readonly medium: SanitisingMedium;
}

interface SanitisingOutputs {
  readonly verdict: RuleVerdict;
  readonly met: readonly number[];
  readonly leastTemperature: readonly number[];
  readonly leastTime: readonly number[];
  readonly leastConcentration: readonly number[];
  readonly mostAcidity: readonly number[];
}

type SanitisingLimit = Limit<SanitisingInputs, SanitisingOutputs>;

const alternativesOf = ({ rule, medium }: SanitisingInputs) => sanitisingAlternatives(rule, medium);
const bottledWater = (rule: SanitisingRuleKey): boolean => rule === '21 CFR 129.80' || rule === 'NJ 8:21-5.8';
const chlorine = (medium: SanitisingMedium): boolean =>
  medium === 'chlorine bath' || medium === 'chlorine spray';
const hot = (medium: SanitisingMedium): boolean =>
  medium === 'steam' || medium === 'hot water' || medium === 'hot air' || medium === 'steam jet';

const about = (code: string, ...objects: readonly SanitisedObject[]): SanitisingLimit => ({
  code,
  broken: (i) => alternativesOf(i).some(({ object }) => objects.includes(object)),
});

/** What the row is for, how it is known, and what the others say. */
const limits: readonly SanitisingLimit[] = [
  authority,
  {
    code: 'RULE_FROM_MEMORY',
    broken: (i) => alternativesOf(i).some(({ mark }) => mark === 'memory'),
  },
  {
    code: 'RULE_TRANSCRIBED',
    broken: (i) => alternativesOf(i).some(({ mark }) => mark === 'read'),
  },
  about('RULE_FOR_TANKS_PIPES', 'storage tanks and pipes', 'pipes'),
  about('RULE_FOR_DAIRY', 'dairy farm equipment'),
  about('RULE_FOR_FOOD_SERVICE', 'food service utensils'),
  {
    code: 'RULE_TIME_NOT_STATED',
    broken: (i) => alternativesOf(i).every(({ leastTime }) => leastTime === undefined),
  },
  {
    code: 'RULE_TWO_POINTS',
    broken: ({ medium, rule }) =>
      medium === 'steam' ||
      (medium === 'hot water' && alternativesOf({ rule, medium } as SanitisingInputs).length > 1),
  },
  { code: 'RULE_ENCLOSED', broken: ({ medium, rule }) => bottledWater(rule) && !chlorine(medium) },
  { code: 'RULE_57_OR_75', broken: ({ medium, rule }) => bottledWater(rule) && chlorine(medium) },
  { code: 'RULE_OZONE_5_OR_10', broken: ({ medium }) => medium === 'ozone water' },
  { code: 'RULE_HOT_WATER_5_OR_15', broken: ({ medium }) => medium === 'hot water' },
  {
    code: 'RULE_PH_ASKED',
    broken: (i) => alternativesOf(i).some(({ mostAcidity }) => mostAcidity !== undefined),
  },
  // 200 ppm: 40 CFR 180.940
  { code: 'RULE_CHLORINE_MOST', broken: (i) => chlorine(i.medium) && !staysWithin(i.concentration, 0.2) },
  // 0.4 mg/L: 21 CFR 184.1563
  {
    code: 'RULE_OZONE_MOST',
    broken: (i) => i.medium === 'ozone water' && !staysWithin(i.concentration, 4e-4),
  },
  { code: 'RULE_FINAL_RINSE', broken: ({ medium, rule }) => bottledWater(rule) && chlorine(medium) },
  { code: 'RULE_RECORD', broken: ({ rule }) => bottledWater(rule) },
  { code: 'CAUTION_CHEMICAL', broken: ({ medium }) => !hot(medium) },
  { code: 'CAUTION_SCALD', broken: ({ medium }) => hot(medium) },
  always('RULE_COLDEST_PLACE'),
];

const noRow = ({ rule, medium }: SanitisingInputs): readonly Problem[] =>
  sanitisingAlternatives(rule, medium).length > 0
    ? []
    : [{ code: 'RULE_NO_ROW', path: 'medium', given: medium, allowed: mediaOfRule(rule), parts: { rule } }];

const stated = (values: readonly (number | undefined)[]): readonly number[] =>
  values.filter((value) => value !== undefined);

export const sanitisingRuleSheet = defineSheet<SanitisingInputs, SanitisingOutputs>({
  id: 'hygiene/sanitising-rule',
  version: 1,
  inputs: {
    rule: choiceField<SanitisingRuleKey>('\\text{rule}', sanitisingRuleKeys),
    medium: choiceField<SanitisingMedium>('\\text{medium}', sanitisingMedia),
    temperature: numberField('temperature', 'T', temperatures),
    time: numberField('time', 't', times),
    concentration: numberField('soluteConcentration', 'C', { ...disinfectants, assumed: 0 }),
    // a pH that nobody measured meets no highest pH
    acidity: numberField('acidity', '\\mathrm{pH}', { ...acidities, assumed: 14 }),
  },
  outputs: {
    verdict: choiceField<RuleVerdict>('\\text{verdict}', ['meets', 'does not meet']),
    met: listField('count', 'm_k'),
    leastTemperature: listField('temperature', 'T_k'),
    leastTime: listField('time', 't_k'),
    leastConcentration: listField('soluteConcentration', 'C_k'),
    mostAcidity: listField('acidity', '\\mathrm{pH}_k'),
  },
  formula: [
    'm_k = 1 \\text{ if } T \\ge T_k,\\ t \\ge t_k,\\ C \\ge C_k,\\ \\mathrm{pH} \\le \\mathrm{pH}_k, \\text{ each where stated; else } 0',
    '\\text{meets if any } m_k = 1',
  ],
  limits,
  sources: Object.values(sanitisingRuleSources),
  check: noRow,
  compute: (i) => {
    const alternatives = alternativesOf(i);
    const met = alternatives.map((alternative) => (meetsAlternative(alternative, i) ? 1 : 0));
    return {
      verdict: met.includes(1) ? 'meets' : 'does not meet',
      met,
      leastTemperature: stated(alternatives.map((each) => each.leastTemperature)),
      leastTime: stated(alternatives.map((each) => each.leastTime)),
      leastConcentration: stated(alternatives.map((each) => each.leastConcentration)),
      mostAcidity: stated(alternatives.map((each) => each.mostAcidity)),
    };
  },
});
