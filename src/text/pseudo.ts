/** The made-up locale in which every text of the catalogue is accented and bracketed. */
export const pseudoLocale = 'qps';

const accents: Readonly<Record<string, string>> = {
  a: 'á',
  c: 'ç',
  d: 'ð',
  e: 'é',
  g: 'ğ',
  h: 'ĥ',
  i: 'í',
  j: 'ĵ',
  k: 'ķ',
  l: 'ļ',
  n: 'ñ',
  o: 'ö',
  r: 'ŕ',
  s: 'š',
  t: 'ţ',
  u: 'ü',
  w: 'ŵ',
  y: 'ý',
  z: 'ž',
  A: 'Á',
  C: 'Ç',
  E: 'É',
  I: 'Í',
  N: 'Ñ',
  O: 'Ö',
  S: 'Š',
  U: 'Ü',
};

/** Accents a text letter by letter; a text on a screen that is not accented did not come from the catalogue. */
export const accented = (text: string): string =>
  [...text].map((letter) => accents[letter] ?? letter).join('');

/** Brackets round a whole pseudo message, parts included. */
export const bracketed = (text: string): string => `⟦${text}⟧`;
