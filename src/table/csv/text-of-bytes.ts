import { accept, type Result, refuse } from '../../quantity/problem.ts';
import { problemOf } from '../problem-of.ts';
import type { Encoding } from './encodings.ts';
import { misplacedLetters } from './misplaced-letters.ts';

/** A text, and the code page in which it was read where the file does not tell it: another may be meant. */
export interface DecodedText {
  readonly text: string;
  readonly taken?: Encoding;
}

/**
 * What Windows has where ISO 8859-1 has controls, 0x80 to 0x9f; a dot where it has nothing. Some platforms take the one
 * for the other and would lose dashes, quotation marks and the euro.
 *
 * Source  WHATWG Encoding Standard, index windows-1252 (read as what browsers give)
 */
const inPlaceOfControls = '€·‚ƒ„…†‡ˆ‰Š‹Œ·Ž··‘’“”•–—˜™š›œ·žŸ';

const withoutControls = (text: string): string =>
  text.replace(/[\u0080-\u009f]/g, (control) => {
    const sign = inPlaceOfControls.charAt(control.charCodeAt(0) - 0x80);
    return sign === '·' ? control : sign;
  });

const strict = (bytes: Uint8Array, encoding: Encoding): string | undefined => {
  try {
    const text = new TextDecoder(encoding, { fatal: true }).decode(bytes);
    return encoding === 'windows-1252' ? withoutControls(text) : text;
  } catch {
    return undefined;
  }
};

/** UTF-16 by its mark, or by the zero that it has beside each letter of a heading. */
const wideOf = ([first, second]: Uint8Array): Encoding | undefined => {
  if ((first === 0xff && second === 0xfe) || (first !== 0 && second === 0)) return 'utf-16le';
  if ((first === 0xfe && second === 0xff) || (first === 0 && second !== 0)) return 'utf-16be';
  return undefined;
};

/** The code page of one byte a letter in which fewest letters make no sense; Windows' own where both read as well. */
const narrow = (bytes: Uint8Array): DecodedText => {
  const [windows, mac] = (['windows-1252', 'macintosh'] as const).map((taken) => ({
    text: strict(bytes, taken) ?? '',
    taken,
  })) as [DecodedText, DecodedText];
  return misplacedLetters(mac.text) < misplacedLetters(windows.text) ? mac : windows;
};

const decoded = (bytes: Uint8Array): DecodedText | undefined => {
  const wide = wideOf(bytes);
  const text = strict(bytes, wide ?? 'utf-8');
  if (text !== undefined) return { text };
  return wide === undefined ? narrow(bytes) : undefined;
};

const asSaid = (bytes: Uint8Array, said: Encoding): DecodedText | undefined => {
  const text = strict(bytes, said);
  return text === undefined ? undefined : { text, taken: said };
};

/**
 * Text of a file that may not say how its letters are written: UTF-16, else UTF-8, else one of the two western code
 * pages in which spreadsheets still save text, without which every degree and micro sign would be lost.
 *
 * Symbols  said  what a person says that it is; nothing is tried then
 */
export const textOfBytes = (bytes: Uint8Array, said?: Encoding): Result<DecodedText> => {
  const read = said === undefined ? decoded(bytes) : asSaid(bytes, said);
  if (read === undefined && said !== undefined)
    return refuse(problemOf('TABLE_NOT_IN_ENCODING', '', { given: said }));
  // no text has the character 0: it is a picture, a program, a damaged file
  return read === undefined || read.text.includes('\u0000')
    ? refuse(problemOf('TABLE_NOT_TEXT'))
    : accept(read);
};
