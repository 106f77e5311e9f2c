/** Stands between the languages; the template sets what is behind it apart (frame.typ). */
const between = '\u2002/\u2002';

/** Ends the second language: a place to break that no text has twice. */
const end = '\u200b\u200b';

/**
 * What stands there in the first language alone: of the head what is no sentence, and the workings, which nobody
 * fills in.
 */
const once = new Set(['stamp', 'whole', 'lang', 'beside', 'unreviewed', 'short', 'book', 'page', 'workings']);

/** Languages differ in the space before a unit or a colon: that is no other text. */
const bare = (text: string): string => text.replace(/\s/gu, '');

/**
 * Each text with that of the second language behind it, where the two differ.
 *
 * Method   both contents come from the same data, so that they differ in words alone; where they do not fit each
 *          other the first stands by itself
 * Symbols  own    content in the first language, as the fonts can print it
 *          other  the same in the second one
 */
const besideEachOther = (own: unknown, other: unknown): unknown => {
  if (typeof own === 'string') {
    return typeof other !== 'string' || bare(other) === bare(own) ? own : `${own}${between}${other}${end}`;
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

interface Headed {
  readonly head?: { readonly lang?: string; readonly unreviewed?: string };
}

/** The content of a paper in two languages, as it is handed to the template. */
export const inTwoLanguages = (own: unknown, other: unknown): unknown => {
  const both = besideEachOther(own, other) as Headed;
  const { lang, unreviewed } = (other as Headed).head ?? {};
  return {
    ...both,
    head: { ...both.head, beside: lang, ...(unreviewed === undefined ? {} : { unreviewed }) },
  };
};
