/** Longer runs without a place to break would stand out of their column. */
const longestRun = 14;
const breakHere = '\u200b';

const marked = (code: number): string => `‹U+${code.toString(16).toUpperCase().padStart(4, '0')}›`;

/** Controls, marks that turn the direction, and halves of characters: invisible, or not what they seem. */
const hidden = /[\p{Cc}\p{Cf}\p{Cs}\p{Co}\p{Cn}\p{Zl}\p{Zp}]/u;

/** A long run of letters, such as a made-up name, may be broken anywhere after so many. */
const breakable = (text: string): string =>
  text.replace(/[^\s\u00a0\u202f\u2009]{15,}/gu, (run) => {
    const letters = [...run];
    const parts: string[] = [];
    for (let i = 0; i < letters.length; i += longestRun)
      parts.push(letters.slice(i, i + longestRun).join(''));
    return parts.join(breakHere);
  });

/**
 * A text as the fonts can print it. A character that they have no picture for stands there by its number, so that
 * nothing is dropped in silence and nothing unseen turns a line around.
 */
export const legibleText = (text: string, has: (codePoint: number) => boolean): string => {
  const one = text.normalize('NFC').replace(/[\t\n\r\v\f]+/g, ' ');
  const shown = [...one].map((letter) => {
    const code = letter.codePointAt(0) ?? 0;
    if (hidden.test(letter) || !has(code)) return marked(code);
    return letter;
  });
  return breakable(shown.join(''));
};

/** The same for every text of a paper's content. */
export const legible = <T>(content: T, has: (codePoint: number) => boolean): T => {
  const walk = (node: unknown): unknown => {
    if (typeof node === 'string') return legibleText(node, has);
    if (Array.isArray(node)) return node.map(walk);
    if (node === null || typeof node !== 'object') return node;
    return Object.fromEntries(Object.entries(node).map(([key, value]) => [key, walk(value)]));
  };
  return walk(content) as T;
};
