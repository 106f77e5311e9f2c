import { parseQuantity } from '../../quantity/index.ts';

/** A typed volume in m3; undefined while it does not read. */
export const readVolume = (text: string | undefined, locale: string): number | undefined => {
  if (text === undefined || text.trim() === '') return undefined;
  const read = parseQuantity(text, 'volume', { path: 'variation', locale });
  return read.ok ? read.value.value : undefined;
};
