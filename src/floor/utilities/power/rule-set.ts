import type { AmpacityEdition } from '../../../sheets/power/ampacity-us.ts';
import type { Calculation } from '../calculation.ts';
import type { Known } from '../known.ts';

export type Rules = 'us' | 'iec';

/** The family of a rule set by its name; undefined for a name of neither. */
export const rulesNamed = (name: string): Rules | undefined => {
  if (/\b(NEC|NFPA|UL)\b/i.test(name)) return 'us';
  return /\b(IEC|60364|60204|HD 384|BS 7671|VDE|EN)\b/i.test(name) ? 'iec' : undefined;
};

/** Electrical rule set that was agreed, by its name; a name of neither family is asked for, never guessed. */
export const rulesOf = (c: Calculation): Rules | undefined => {
  const named = c.word(`${c.floorPath}/power/ruleSet`) ?? c.neededWord('/agreement/electrical/ruleSet');
  if (named === undefined) return undefined;
  const rules = rulesNamed(named.value);
  if (rules !== undefined) return rules;
  if ('path' in named.from) c.miss(named.from.path);
  c.note('RULE_SET_NOT_HELD', { ruleSet: named.value });
  return undefined;
};

/** Which edition of the US ampacity table holds: it changed in 2011. */
export const ampacityEdition = (c: Calculation): Known<AmpacityEdition> => {
  const own = c.word(`${c.floorPath}/power/ruleSet`) !== undefined;
  const path = own ? `${c.floorPath}/power/edition` : '/agreement/electrical/edition';
  const year = Number(/\d{4}/.exec(c.word(path)?.value ?? '')?.[0]);
  if (!Number.isFinite(year)) {
    c.assume(path);
    return { value: 'from-2011', from: { path, assumed: true } };
  }
  return { value: year <= 2008 ? 'to-2008' : 'from-2011', from: { path } };
};
