import { accept, type Result, refuse } from '../../quantity/problem.ts';
import { serverProblem } from '../problems.ts';

/**
 * The characters of a code: none that another of them, or a character that is left out, can be taken for on a
 * dirty screen (0 O, 1 I L, 2 Z, 5 S, 8 B, Q, U). There are 23 of them, a prime, which the check wants.
 */
export const pairingLetters = '34679ACDEFGHJKMNPRTVWXY';

/** Characters of a code, the last of which checks the others: 23^7 codes, 3.4 thousand million. */
export const pairingLength = 8;

/**
 * Check value of a row of values.
 *
 * Method   c = -sum(w[i] x[i]) mod p, w counting down from n + 1 to 2: with a prime p above every weight one wrong
 *          character and two exchanged ones, side by side or apart, never go unseen
 * Symbols  x  values   [n]     0 <= x < p
 *          p  modulus  scalar  prime, > n + 1
 * Returns  c, 0 <= c < p
 * Cost     O(n)
 * Source   the scheme of ISBN-10 (ISO 2108), there with p = 11
 */
export const checkValue = (values: readonly number[], modulus: number): number => {
  const sum = values.reduce((whole, value, i) => whole + (values.length + 1 - i) * value, 0);
  return (modulus - (sum % modulus)) % modulus;
};

const modulus = pairingLetters.length;

const withCheck = (values: readonly number[]): string =>
  [...values, checkValue(values, modulus)].map((value) => pairingLetters[value]).join('');

/** A new code out of what chance gives: each as likely as any other. */
export const makePairingCode = (random: (bytes: number) => Uint8Array): string => {
  const values: number[] = [];
  // the bytes above the last whole turn would make some characters likelier
  const fair = 256 - (256 % modulus);
  while (values.length < pairingLength - 1) {
    for (const byte of random(pairingLength)) {
      if (byte < fair && values.length < pairingLength - 1) values.push(byte % modulus);
    }
  }
  return withCheck(values);
};

/** As it is shown and read out: in two halves. */
export const shownPairingCode = (code: string): string =>
  `${code.slice(0, pairingLength / 2)}-${code.slice(pairingLength / 2)}`;

/** A code as somebody typed it: capitals, blanks and dashes don't matter; what can't be a code is told without a guess. */
export const readPairingCode = (typed: string): Result<string> => {
  const code = typed.toUpperCase().replace(/[\s\-\u2010-\u2015]/g, '');
  const foreign = [...new Set(code)].filter((letter) => !pairingLetters.includes(letter));
  if (foreign.length > 0) {
    return refuse(
      serverProblem('HALL_CODE_LETTERS', 'code', {
        given: foreign.slice(0, 8).join(' '),
        allowed: pairingLetters,
      }),
    );
  }
  if (code.length !== pairingLength) {
    return refuse(
      serverProblem('HALL_CODE_LENGTH', 'code', { given: code.length, allowed: String(pairingLength) }),
    );
  }
  const values = [...code].map((letter) => pairingLetters.indexOf(letter));
  return withCheck(values.slice(0, -1)) === code
    ? accept(code)
    : refuse(serverProblem('HALL_CODE_MISTYPED', 'code'));
};
