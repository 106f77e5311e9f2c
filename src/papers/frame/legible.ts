/** Longer runs without a place to break would stand out of their column; such as are no words go into a narrow one. */
const longestRun = 14;
const narrow = 8;
/** Words up to this are broken by the rules of their language (frame.typ). */
const longestWord = 40;
const breakHere = '\u200b';

const marked = (code: number): string => `‹U+${code.toString(16).toUpperCase().padStart(4, '0')}›`;

/** Controls, marks that turn the direction, and halves of characters: invisible, or not what they seem. */
const hidden = /[\p{Cc}\p{Cf}\p{Cs}\p{Co}\p{Cn}\p{Zl}\p{Zp}]/u;

/** All but the letters, digits and marks that every font has. */
const besideAscii = /[^\x20-\x7e]/gu;

const inPieces = (run: string, most: number): string => {
  const letters = [...run];
  const pieces: string[] = [];
  for (let i = 0; i < letters.length; i += most) pieces.push(letters.slice(i, i + most).join(''));
  return pieces.join(breakHere);
};

/** What is longer than any word, such as a digest or a made-up name, may be broken anywhere after so many letters. */
const breakable = (text: string): string =>
  text.replace(/[^\s\u00a0\u202f\u2009]{15,}/gu, (run) =>
    // a line may end behind these anyway
    run.replace(/[^-/]{15,}/gu, (part) => {
      if (part.length > longestWord) return inPieces(part, narrow);
      return /^\p{L}+\p{P}?$/u.test(part) ? part : inPieces(part, longestRun);
    }),
  );

/**
 * A text as the fonts can print it. A character that they have no picture for stands there by its number, so that
 * nothing is dropped in silence and nothing unseen turns a line around.
 */
export const legibleText = (text: string, has: (codePoint: number) => boolean): string => {
  const one = text.normalize('NFC').replace(/[\t\n\r\v\f]+/g, ' ');
  const shown = one.replace(besideAscii, (letter) => {
    const code = letter.codePointAt(0) ?? 0;
    return hidden.test(letter) || !has(code) ? marked(code) : letter;
  });
  return breakable(shown);
};

/** The same for every text of a paper's content. */
export const legible = <T>(content: T, has: (codePoint: number) => boolean): T => {
  // a paper says the same names and units many times
  const texts = new Map<string, string>();
  const shown = (text: string): string => {
    let found = texts.get(text);
    if (found === undefined) {
      found = legibleText(text, has);
      texts.set(text, found);
    }
    return found;
  };
  const walk = (node: unknown): unknown => {
    if (typeof node === 'string') return shown(node);
    if (Array.isArray(node)) return node.map(walk);
    if (node === null || typeof node !== 'object') return node;
    return Object.fromEntries(Object.entries(node).map(([key, value]) => [key, walk(value)]));
  };
  return walk(content) as T;
};
