import { tellingDigits } from '../../floor/telling-digits.ts';
import type { AnyFinding } from '../../floor/utilities/utility-finding.ts';
import type { Kind } from '../../quantity/index.ts';
import { utilityName } from '../../text/words/utility-name.ts';
import type { Shown, ShowOptions, Words } from '../words/words.ts';

/** A value of a finding; a share is said in per cent. */
export const findingQuantity = (words: Words, value: number, kind: Kind, show: ShowOptions): Shown =>
  words.quantity(value, kind, kind === 'ratio' ? { ...show, unit: '%' } : show);

/** "short of 0.21 bar", "within 1.6 m/s", "not known, asks 0.21 bar": never by colour or shape alone. */
export const verdictText = (words: Words, finding: AnyFinding, show: ShowOptions): string => {
  const { demand, have, sense, verdict, said } = finding;
  if (said?.demand !== undefined) {
    // what is asked is a word or a range: a purity class, the acidity of a drain
    return words.say(verdict === 'unknown' ? 'verdict.unknown.demand' : `verdict.${sense}.${verdict}`, {
      demand: said.demand,
    });
  }
  if (said !== undefined && demand.value === undefined) return words.say(`verdict.${verdict}`);
  if (demand.value === undefined) return words.say('verdict.unknown.none');
  const asked = findingQuantity(words, demand.value, demand.kind, {
    digits: tellingDigits(finding),
    ...show,
  }).text;
  if (verdict !== 'unknown') {
    const nothing = demand.value === 0 && sense === 'least';
    return words.say(nothing ? `verdict.nothing.${verdict}` : `verdict.${sense}.${verdict}`, {
      demand: asked,
    });
  }
  if (have.value === undefined) return words.say('verdict.unknown.demand', { demand: asked });
  return words.say(sense === 'most' ? 'verdict.straddles.most' : 'verdict.straddles', { demand: asked });
};

/** The name of a figure or finding; one of a utility stands before its thing: `airPressure AIR-1`. */
export const figureName = (words: Words, id: string): string => {
  if (words.has(`figure.${id}`)) return words.say(`figure.${id}`);
  const [question = '', ...rest] = id.split(' ');
  const of = rest.length === 0 ? undefined : rest.join(' ');
  const key = ['utility.question', 'utility.figure'].find((each) => words.has(`${each}.${question}`));
  return key === undefined ? id : utilityName(words.say, `${key}.${question}`, of);
};
