import { type Book, type Patch, valueAt } from '../../book/index.ts';
import { unitNamed } from '../../quantity/convert.ts';
import { fromSi, si, toSi } from '../../quantity/index.ts';
import type { Kind } from '../../quantity/kinds.ts';
import { readEntry } from '../../quantity/read-entry.ts';

/** A quantity of the book in the unit in which it is written there. */
export interface Written {
  readonly path: string;
  readonly kind: Kind;
  readonly unit: string;
  /** In that unit; the middle of a range. */
  readonly number: number;
}

/** What stands at a place, or a start in a default unit where nothing does. */
export const writtenAt = (
  book: Book,
  path: string,
  kind: Kind,
  otherwise?: { readonly unit: string; readonly number: number },
): Written | undefined => {
  const given = valueAt(book, path);
  const read = given === undefined ? undefined : readEntry(given, kind, { path });
  if (read?.ok) {
    const { unit, value } = read.value;
    return { path, kind, unit, number: fromSi(si(kind, value), kind, unit) };
  }
  return given === undefined && otherwise !== undefined ? { path, kind, ...otherwise } : undefined;
};

/** A number without the noise of its last bits, as a person would write it. */
export const plainNumber = (number: number): string => String(Number(number.toPrecision(6)));

/** As one writes it in a book: `Kv 16`, `16 mm`. */
export const writtenText = ({ kind, unit }: Written, number: number): string =>
  unitNamed(kind, unit).before ? `${unit} ${plainNumber(number)}` : `${plainNumber(number)} ${unit}`.trim();

export const writtenSi = (written: Written, number: number): number =>
  toSi(Number(plainNumber(number)), written.kind, written.unit);

/** The patch that puts another number there and leaves who said it and how sure it is as it was. */
export const writtenPatch = (book: Book, written: Written, number: number): Patch => {
  const given = valueAt(book, written.path);
  const inside = typeof given === 'object' && given !== null && !Array.isArray(given);
  return { path: inside ? `${written.path}/value` : written.path, value: writtenText(written, number) };
};

/** A round step that people would name for a unit: about a hundredth of the number, 1, 2 or 5 of some power of ten. */
export const roundStep = (about: number): number => {
  const power = 10 ** Math.floor(Math.log10(Math.max(about, 1e-9)));
  const lead = about / power;
  return (lead >= 5 ? 5 : lead >= 2 ? 2 : 1) * power;
};
