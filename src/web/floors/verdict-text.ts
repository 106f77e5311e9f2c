import type { Finding } from '../../floor/assessment.ts';
import { tellingDigits } from '../../floor/telling-digits.ts';
import type { ShowOptions, Words } from '../words/words.ts';

/** "short of 0.21 bar", "within 1.6 m/s", "not known, asks 0.21 bar": never by colour or shape alone. */
export const verdictText = (words: Words, finding: Finding, show: ShowOptions): string => {
  const { demand, have, sense, verdict } = finding;
  if (demand.value === undefined) return words.say('verdict.unknown.none');
  const asked = words.quantity(demand.value, demand.kind, { digits: tellingDigits(finding), ...show }).text;
  if (verdict !== 'unknown') return words.say(`verdict.${sense}.${verdict}`, { demand: asked });
  if (have.value === undefined) return words.say('verdict.unknown.demand', { demand: asked });
  return words.say(sense === 'most' ? 'verdict.straddles.most' : 'verdict.straddles', { demand: asked });
};

/** The name of a figure or finding; an id without words is shown as it is. */
export const figureName = (words: Words, id: string): string =>
  words.has(`figure.${id}`) ? words.say(`figure.${id}`) : id;
