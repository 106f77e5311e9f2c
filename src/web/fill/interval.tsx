import type { ReactElement } from 'react';
import type { Within } from '../../fill/index.ts';
import type { Kind } from '../../quantity/index.ts';
import { usePagePart, useWords } from '../state/page-context.ts';

export interface IntervalProps {
  readonly of: Within;
  readonly kind: Kind;
  readonly unit?: string;
}

/** Digits that tell a value as far as its interval lets them mean something, and one more. */
export const digitsFor = ({ value, lower, upper }: Pick<Within, 'value' | 'lower' | 'upper'>): number => {
  const half = 0.5 * (upper - lower);
  if (!(half > 0) || value === 0) return 4;
  const told = Math.floor(Math.log10(Math.abs(value))) - Math.floor(Math.log10(half)) + 2;
  return Math.min(6, Math.max(2, told));
};

const hour = 3600;

/** Nobody counts parts of a bottle in an hour. */
const wholeBottles = (rate: number): number => Math.max(1, Math.floor(Math.log10(rate * hour)) + 1);

/** A value with its unit and behind it the ends of its interval. */
export const Interval = ({ of, kind, unit }: IntervalProps): ReactElement => {
  const words = useWords();
  const units = usePagePart((state) => state.units);
  const book = usePagePart((state) => state.book);
  const digits = kind === 'rate' ? wholeBottles(of.value) : digitsFor(of);
  const show = { units, book, digits, unit };
  const value = words.quantity(of.value, kind, { ...show, bottles: true });
  // what is said of bottles is no unit that could be asked for again
  const plain = words.quantity(of.value, kind, show).unit;
  const end = (one: number): string => words.quantity(one, kind, { ...show, unit: plain }).number;
  return (
    <span className="interval">
      <b>{value.number}</b> <span className="unit">{value.unit}</span>{' '}
      <span className="quiet small">
        {end(of.lower)}&nbsp;…&nbsp;{end(of.upper)}
      </span>
    </span>
  );
};
