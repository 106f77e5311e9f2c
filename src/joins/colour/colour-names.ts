/** Colours of conductors by their letters of IEC 60757, with the words of five languages (memory). */
const words: Readonly<Record<string, readonly string[]>> = {
  BK: ['black', 'schwarz', 'negro', 'noir', 'sw'],
  BN: ['brown', 'braun', 'marrón', 'marron', 'brun', 'br', 'café'],
  RD: ['red', 'rot', 'rojo', 'rouge', 'rt'],
  OG: ['orange', 'naranja', 'or'],
  YE: ['yellow', 'gelb', 'amarillo', 'jaune', 'ge'],
  GN: ['green', 'grün', 'gruen', 'verde', 'vert', 'gr'],
  BU: ['blue', 'blau', 'azul', 'bleu', 'bl', 'light blue', 'hellblau', 'azul claro', 'bleu clair'],
  VT: ['violet', 'purple', 'violett', 'lila', 'violeta', 'vi'],
  GY: ['grey', 'gray', 'grau', 'gris'],
  WH: ['white', 'weiß', 'weiss', 'blanco', 'blanc', 'ws'],
  PK: ['pink', 'rosa', 'rose', 'rs'],
  TQ: ['turquoise', 'türkis', 'turquesa', 'tk'],
};

const byWord = new Map(
  Object.entries(words).flatMap(([code, names]) =>
    [code.toLowerCase(), ...names].map((name) => [name, code] as const),
  ),
);

/** What parts two colours of one conductor. */
const between = /\s*(?:[-/+&]|\bund\b|\band\b|\by\b|\bet\b|\bwith\b|\bmit\b)\s*/u;
const stripe = /\s*(?:stripes?|striped|gestreift|rayas?|rayé)\s*/gu;

/** `GNYE` and `GN/YE` are written in one word where the letters are used. */
const lettersOf = (word: string): readonly string[] | undefined => {
  if (!/^(?:[a-z]{2}){2}$/.test(word)) return undefined;
  const pair = [word.slice(0, 2), word.slice(2)].map((half) => half.toUpperCase());
  return pair.every((half) => half in words) ? pair : undefined;
};

/**
 * A colour in letters of IEC 60757, two of them in order of the alphabet: `green-yellow`, `gelb/grün` and `GNYE` are
 * one. Absent: none of the words is known, so that it can't be compared with a rule.
 */
export const colourLetters = (text: string): string | undefined => {
  const plain = text.normalize('NFC').toLowerCase().replace(stripe, ' ').trim();
  const whole = byWord.get(plain);
  if (whole !== undefined) return whole;
  const parts = lettersOf(plain) ?? plain.split(between).map((word) => byWord.get(word.trim()));
  if (parts.some((part) => part === undefined)) return undefined;
  return [...new Set(parts)].sort().join('');
};

/** Two colours are one where their letters are, or, where a word is not known, where the words are. */
export const sameColour = (a: string, b: string): boolean => {
  const [one, other] = [a, b].map((text) => colourLetters(text) ?? text.trim().toLowerCase());
  return one === other;
};
