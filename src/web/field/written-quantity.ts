import { type Kind, parseQuantity, type Result, si } from '../../quantity/index.ts';
import { accept, refuse } from '../../quantity/problem.ts';

const bare = /^[+\-\u2212]?[\d\s\u00a0\u202f'.,]+$/;

export interface Typed {
  readonly text: string;
  readonly kind: Kind;
  /** Stands beside the field; a text with its own unit keeps that. */
  readonly unit: string;
  readonly locale: string;
  /** Of the field, for problems. */
  readonly path: string;
}

/**
 * A typed text as it stands in a record: the number with a point and its unit, digits as typed.
 *
 * Returns  text and SI value
 * Problems those of parseQuantity
 */
export const writtenQuantity = ({
  text,
  kind,
  unit,
  locale,
  path,
}: Typed): Result<{ readonly text: string; readonly value: number }> => {
  const typed = text.trim();
  const whole = bare.test(typed) ? `${typed} ${unit}` : typed;
  const read = parseQuantity(whole, kind, { path, locale });
  if (!read.ok) return refuse(...read.problems);
  const comma = new Intl.NumberFormat(locale).format(1.5).includes(',');
  return accept({
    text: comma
      ? whole.replaceAll('.', '').replace(',', '.')
      : whole.replace(/(\d)[,\u00a0\u202f\s](?=\d{3})/g, '$1'),
    value: si(kind, read.value.value) as number,
  });
};
