import type { Kind } from '../../quantity/index.ts';
import type { ShowOptions, Words } from '../words/words.ts';

/** What stands at a changed place, in a few words. */
export const changedValue = (words: Words, value: unknown): string => {
  if (value === undefined) return words.say('compare.nothing');
  if (Array.isArray(value)) return words.say('compare.list', { n: value.length });
  if (typeof value === 'boolean') return words.say(value ? 'write.yes' : 'write.no');
  if (typeof value === 'object' && value !== null) {
    if ('value' in value) return words.entryText(value);
    const { name, tag } = value as { readonly name?: unknown; readonly tag?: unknown };
    return String(name ?? tag ?? words.say('compare.part'));
  }
  const key = `word.${String(value)}`;
  return words.has(key) ? words.say(key) : words.entryText(value);
};

/** A difference of gauge pressures is no gauge pressure, one of temperatures no temperature. */
const differenceOf: Partial<Record<Kind, Kind>> = {
  gaugePressure: 'pressureDifference',
  absolutePressure: 'pressureDifference',
  temperature: 'temperatureDifference',
};

/** "+80 bottles/h": by how much a figure moved, its sign always there. */
export const signedQuantity = (words: Words, difference: number, kind: Kind, show: ShowOptions): string => {
  const { text } = words.quantity(Math.abs(difference), differenceOf[kind] ?? kind, {
    digits: 3,
    ...show,
  });
  return `${difference < 0 ? '\u2212' : '+'}${text}`;
};
