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

/** The text without what parts thousands and with a point, of which a reader in any language makes the same value. */
const plainText = (whole: string, kind: Kind, value: number): string => {
  const together = whole.replace(/(\d)[\u00a0\u202f\s'’](?=\d{3})/g, '$1');
  const forms = [together.replaceAll('.', '').replace(',', '.'), together.replaceAll(',', '')];
  const same = forms.find((form) => {
    const read = parseQuantity(form, kind, { path: '' });
    return read.ok && read.value.value === value;
  });
  return same ?? whole;
};

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
  return accept({
    text: plainText(whole, kind, read.value.value),
    value: si(kind, read.value.value) as number,
  });
};
