/** Stands between the languages; the template sets what is behind it apart (frame.typ). */
const between = '\u2002/\u2002';

/** Ends the second language: a place to break that no text has twice. */
const end = '\u200b\u200b';

/** What stands in the head and is no sentence: the stamp of the book, its hash, tags of languages. */
const once = new Set(['stamp', 'whole', 'lang', 'beside', 'unreviewed', 'short', 'book', 'page']);

/**
 * The content of a paper in two languages: each text that the second language says otherwise has it behind.
 *
 * Method   both contents come from the same data, so that they differ in words alone; where they do not fit each
 *          other the first stands by itself
 * Symbols  own    content in the first language, as the fonts can print it
 *          other  the same in the second one
 */
export const besideEachOther = (own: unknown, other: unknown): unknown => {
  if (typeof own === 'string') {
    return typeof other !== 'string' || other === own ? own : `${own}${between}${other}${end}`;
  }
  if (Array.isArray(own)) {
    return Array.isArray(other) && other.length === own.length
      ? own.map((one, i) => besideEachOther(one, other[i]))
      : own;
  }
  if (own === null || typeof own !== 'object' || other === null || typeof other !== 'object') return own;
  const second = other as Readonly<Record<string, unknown>>;
  return Object.fromEntries(
    Object.entries(own).map(([key, value]) => [
      key,
      once.has(key) ? value : besideEachOther(value, second[key]),
    ]),
  );
};
