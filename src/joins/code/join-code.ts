import { sha256 } from '../../record/sha256.ts';
import { checkValue, isChecked } from './check-character.ts';

/**
 * Twenty-three characters of which no two look alike in print or by hand: of 0 O Q D, of 1 I L, of U V and of G, S, B, Z
 * beside 6, 5, 8, 2 none stands here but the four digits. As many as a prime, which the check character wants.
 */
export const alphabet = '23456789ACEFHJKMNPRTWXY';

const modulus = alphabet.length;
const radix = 2;
const characters = 6;

/** Letters that can only be one of the alphabet badly written. */
const meant: Readonly<Record<string, string>> = { Z: '2', S: '5', G: '6', B: '8' };

const utf8 = new TextEncoder();

/** Stands before the code in the square code of a label, so that a scan of something else is not taken for one. */
const scanned = 'TWF:J:';

/** What the square code of a label says: capitals and colons alone, which make it small. */
export const scanText = (code: string): string => `${scanned}${code}`;

/** A code as it is compared, typed or scanned: capitals, without gaps, with what can only be meant. */
export const plainCode = (typed: string): string =>
  [...typed.normalize('NFKC').trim().toUpperCase().replace(scanned, '')]
    .filter((letter) => !/[\s._–-]/u.test(letter))
    .map((letter) => meant[letter] ?? letter)
    .join('');

const valuesOf = (code: string): readonly number[] => [...code].map((letter) => alphabet.indexOf(letter));

/** Whether a text has the form of a code and its check character fits. */
export const isCode = (text: string): boolean => {
  const values = valuesOf(plainCode(text));
  return values.length === characters && !values.includes(-1) && isChecked(values, modulus, radix);
};

/** A code in two halves, as it is printed and read out: `7KM-4XR`. */
export const printedCode = (code: string): string =>
  code.length === characters ? `${code.slice(0, 3)}-${code.slice(3)}` : code;

/**
 * The code that a tag gives: five characters and a check character.
 *
 * Method   the first six bytes of the tag's SHA-256 as a number, in the alphabet; so a code hangs on its own tag alone,
 *          and nothing that is added to the list changes a label that is printed
 * Returns  one of 23^5, 6.4 million; two tags of 5 000 share one about twice, which the check of the list finds
 */
export const codeOfTag = (tag: string): string => {
  const bytes = sha256(utf8.encode(tag));
  let number = 0;
  for (let i = 0; i < 6; i += 1) number = number * 256 + (bytes[i] ?? 0);
  const values: number[] = [];
  for (let i = 0; i < characters - 1; i += 1) {
    values.push(number % modulus);
    number = Math.floor(number / modulus);
  }
  return [...values, checkValue(values, modulus, radix)].map((value) => alphabet[value]).join('');
};

/** The code of a join: its own where the book gives it one, else that of its tag. */
export const codeOfJoin = ({ tag, code }: { readonly tag: string; readonly code?: string }): string =>
  code === undefined ? codeOfTag(tag) : plainCode(code);
