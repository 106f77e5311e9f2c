import { fromSi, type Kind, parseQuantity } from '../../quantity/index.ts';

/** A share of a quantity in its own unit, as a person would write it; a text that can't be read stays as it is. */
export const shareOf = (text: string, kind: Kind, share: number): string => {
  const read = parseQuantity(text, kind, { path: '' });
  if (!read.ok) return text;
  const number = fromSi(read.value.value, kind, read.value.unit) * share;
  return `${Number(number.toPrecision(3))} ${read.value.unit}`;
};
