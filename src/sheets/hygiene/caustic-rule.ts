import { choiceField, listField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { shares, temperatures, times } from './bounds.ts';
import {
  type CausticRule,
  type CausticRuleKey,
  causticRule,
  causticRuleKeys,
  statesFigures,
} from './caustic-rules.ts';
import { authority, chemicalCaution, heatCaution } from './caution.ts';
import { reaches } from './meets.ts';
import type { RuleVerdict } from './sanitising-rule.ts';

/** What the bath and the bottle really get. */
export interface CausticGiven {
  /** Free sodium hydroxide, share. */
  readonly caustic: number;
  /** All alkali together, share. */
  readonly alkali: number;
  readonly time: number;
  readonly temperature: number;
}

/**
 * Whether a caustic wash meets every figure that a code states.
 *
 * Method   every stated figure is kept; nothing is traded between them
 * Symbols  given  shares, s, K at the coldest wetted place
 * Returns  true or false
 * Cost     O(1)
 * Source   the code
 */
export const meetsCausticRule = (rule: CausticRule, given: CausticGiven): boolean =>
  reaches(given.caustic, rule.leastCaustic) &&
  reaches(given.alkali, rule.leastAlkali) &&
  reaches(
    given.caustic,
    rule.leastCausticShare === undefined ? undefined : rule.leastCausticShare * given.alkali,
  ) &&
  reaches(given.time, rule.leastTime) &&
  reaches(given.temperature, rule.leastTemperature);

interface CausticInputs extends CausticGiven {
  readonly rule: CausticRuleKey;
}

const stated = (value: number | undefined): readonly number[] => (value === undefined ? [] : [value]);

export const causticRuleSheet = defineSheet({
  id: 'hygiene/caustic-rule',
  version: 1,
  inputs: {
    rule: choiceField<CausticRuleKey>('\\text{rule}', causticRuleKeys),
    caustic: numberField('massFraction', 'C', shares),
    alkali: numberField('massFraction', 'A', shares),
    time: numberField('time', 't', times),
    temperature: numberField('temperature', 'T', temperatures),
  },
  outputs: {
    verdict: choiceField<RuleVerdict>('\\text{verdict}', ['meets', 'does not meet']),
    leastCaustic: listField('massFraction', 'C_r'),
    leastAlkali: listField('massFraction', 'A_r'),
    leastCausticShare: listField('ratio', 's_r'),
    leastTime: listField('time', 't_r'),
    leastTemperature: listField('temperature', 'T_r'),
  },
  formula: [
    '\\text{meets if } C \\ge C_r,\\ A \\ge A_r,\\ C \\ge s_r A,\\ t \\ge t_r,\\ T \\ge T_r, \\text{ each where stated}',
  ],
  limits: [
    authority,
    chemicalCaution,
    heatCaution,
    { code: 'RULE_TRANSCRIBED', broken: () => true },
    { code: 'CAUSTIC_CODES_DIFFER', broken: () => true },
    {
      code: 'CAUSTIC_TABLE_DISAGREES',
      broken: ({ rule }) => rule === 'CA HSC 112080' || rule === 'OR 603-021-0720',
    },
    { code: 'CAUSTIC_OR_EQUIVALENT', broken: ({ rule }) => rule === 'OR 603-021-0720' },
    { code: 'CAUSTIC_REPEALED', broken: ({ rule }) => rule === 'VA 3.1-382' },
    { code: 'CAUSTIC_TEXT_CUT', broken: ({ rule }) => rule === 'OH 913.27' },
    {
      code: 'CAUSTIC_NOT_ALL_STATED',
      broken: ({ rule }) =>
        causticRule(rule).leastTime === undefined || causticRule(rule).leastTemperature === undefined,
    },
    { code: 'CAUSTIC_BY_WEIGHT', broken: () => true },
  ],
  sources: causticRuleKeys.map((key) => causticRule(key).source),
  check: ({ rule, caustic, alkali }) => [
    ...(statesFigures(causticRule(rule))
      ? []
      : [
          {
            code: 'CAUSTIC_NO_FIGURES',
            path: 'rule',
            given: rule,
            allowed: causticRuleKeys.filter((key) => statesFigures(causticRule(key))),
          },
        ]),
    ...(caustic > alkali
      ? [{ code: 'CAUSTIC_OVER_ALKALI', path: 'caustic', given: caustic, allowed: `<= ${alkali}` }]
      : []),
  ],
  compute: (i: CausticInputs) => {
    const rule = causticRule(i.rule);
    return {
      verdict: (meetsCausticRule(rule, i) ? 'meets' : 'does not meet') as RuleVerdict,
      leastCaustic: stated(rule.leastCaustic),
      leastAlkali: stated(rule.leastAlkali),
      leastCausticShare: stated(rule.leastCausticShare),
      leastTime: stated(rule.leastTime),
      leastTemperature: stated(rule.leastTemperature),
    };
  },
});
