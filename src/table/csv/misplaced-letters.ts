/** Letters beyond ASCII of the languages of western Europe, which share one code page. */
const western = new Set('àáâãäåæçèéêëìíîïñòóôõöøùúûüýßœÀÁÂÃÄÅÆÇÈÉÊËÌÍÎÏÑÒÓÔÕÖØÙÚÛÜÝŒ');

const lower = /^\p{Ll}$/u;
const upper = /^\p{Lu}$/u;
const letter = /^\p{L}$/u;
const digit = /^\d$/;

/** Signs of the trade and of print that stand anywhere. */
const anywhere = new Set('µ®©™€£Ω±«»„’‘…\u00a0');
/** Those that never stand between two letters. */
const apart = new Set('–—•·×÷“”');
/** Those that end a number or a unit: what follows is no small letter. */
const ending = new Set('°ºª¹²³¼½¾');
/** Those that begin something: no letter before them. */
const beginning = new Set('§≤≥');
/** Those that open a sentence that another sign closes. */
const closedBy: Readonly<Record<string, string>> = { '¿': '?', '¡': '!' };

const isMisplaced = (text: string, at: number, sign: string): boolean => {
  const [before, after] = [text.charAt(at - 1), text.charAt(at + sign.length)];
  if (letter.test(sign) && !ending.has(sign) && sign !== 'µ' && sign !== 'Ω') {
    if (!western.has(sign)) return true;
    // the sign of a diameter
    if (/^ø$/iu.test(sign) && digit.test(after)) return false;
    if (lower.test(sign)) return upper.test(after) || digit.test(after);
    // one large letter by itself is a sign that was taken for it
    return lower.test(before) || !(letter.test(before) || letter.test(after));
  }
  if (anywhere.has(sign)) return false;
  if (apart.has(sign)) return letter.test(before) && letter.test(after);
  if (ending.has(sign)) return lower.test(after);
  const closing = closedBy[sign];
  if (closing !== undefined) return letter.test(before) || !text.includes(closing, at);
  return !beginning.has(sign) || letter.test(before);
};

const beyondAscii = /[\u{80}-\u{10ffff}]/gu;

/**
 * How many letters and signs of a text make no sense where they stand, as they do where a text was read in another code
 * page than it was written in: `fŸr`, `12 ¡C`, `mm≤`.
 *
 * Assumes  a list in a language of western Europe; for others the count says nothing
 * Cost     O(length)
 */
export const misplacedLetters = (text: string): number => {
  let count = 0;
  for (const { 0: sign, index } of text.matchAll(beyondAscii)) {
    if (isMisplaced(text, index, sign)) count += 1;
  }
  return count;
};
