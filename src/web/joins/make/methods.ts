import type { Kind } from '../../../quantity/index.ts';
import { readEntry } from '../../../quantity/read-entry.ts';
import type { Words } from '../../words/words.ts';

/** How a join is tested, and what is read of it; a number without a unit is in the first one's. */
export const methods = [
  { method: 'continuity', kind: 'resistance', unit: 'ohm' },
  { method: 'insulation', kind: 'resistance', unit: 'Mohm' },
  { method: 'pull', kind: 'force', unit: 'N' },
  { method: 'torque', kind: 'torque', unit: 'N m' },
  // drops of water, bubbles, a pressure that falls: told in words
  { method: 'leak', kind: undefined, unit: undefined },
] as const satisfies readonly {
  readonly method: string;
  readonly kind: Kind | undefined;
  readonly unit: string | undefined;
}[];

export type Method = (typeof methods)[number]['method'];

export const methodNamed = (name: string): (typeof methods)[number] | undefined =>
  methods.find(({ method }) => method === name);

/** An instrument at the end of its range shows `> 550 Mohm`: at least that. */
const bound = /^[<>≤≥]\s*/;

/**
 * A reading as it will stand in the record, with its unit.
 *
 * Returns  undefined where it is not a quantity of the method's kind
 */
export const readingOf = (
  typed: string,
  name: string,
  { readNumber }: Pick<Words, 'readNumber'>,
): string | undefined => {
  const text = typed.trim();
  const method = methodNamed(name);
  if (method?.kind === undefined) return text;
  const mark = bound.exec(text)?.[0] ?? '';
  const rest = text.slice(mark.length);
  const number = readNumber(rest);
  const whole = number === undefined ? rest : `${number} ${method.unit}`;
  const read = readEntry(whole, method.kind, { path: '' });
  return read.ok && read.value.low >= 0 ? `${mark.trim()}${mark === '' ? '' : ' '}${whole}` : undefined;
};
