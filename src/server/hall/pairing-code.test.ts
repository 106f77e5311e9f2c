import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  checkValue,
  makePairingCode,
  pairingLength,
  pairingLetters,
  readPairingCode,
  shownPairingCode,
} from './pairing-code.ts';

const random = (seed: number) => {
  let state = seed;
  return (bytes: number): Uint8Array =>
    Uint8Array.from({ length: bytes }, () => {
      // the generator of ISO/IEC 9899:2011, 7.22.2: any will do
      state = (Math.imul(state, 1103515245) + 12345) >>> 0;
      return (state >>> 16) & 255;
    });
};
const anyCode = fc.nat().map((seed) => makePairingCode(random(seed)));

describe('the check character', () => {
  // ISBN-10 as printed in the books themselves (memory): the same scheme with 11 for 23, X for 10
  it.each([
    ['Knuth, The Art of Computer Programming 1, 3rd edition', '0201896834'],
    ['Kernighan and Ritchie, The C Programming Language, 2nd edition', '0131103628'],
    ['Press et al., Numerical Recipes in C, 2nd edition', '0521431085'],
  ])('is that of ISBN-10: %s', (_, isbn) => {
    const values = [...isbn].map((digit) => (digit === 'X' ? 10 : Number(digit)));
    expect(checkValue(values.slice(0, 9), 11)).toBe(values[9]);
  });

  it('shows every single wrong character and every two that changed places', () => {
    fc.assert(
      fc.property(anyCode, (code) => {
        for (let i = 0; i < pairingLength; i += 1) {
          for (const letter of pairingLetters) {
            if (letter === code[i]) continue;
            const wrong = `${code.slice(0, i)}${letter}${code.slice(i + 1)}`;
            expect(readPairingCode(wrong)).toMatchObject({ problems: [{ code: 'HALL_CODE_MISTYPED' }] });
          }
          for (let j = i + 1; j < pairingLength; j += 1) {
            const swapped = [...code];
            [swapped[i], swapped[j]] = [swapped[j] ?? '', swapped[i] ?? ''];
            if (swapped.join('') !== code) expect(readPairingCode(swapped.join('')).ok).toBe(false);
          }
        }
      }),
      { numRuns: 40 },
    );
  });
});

describe('a code', () => {
  it('is read as it is shown, in small letters, with blanks and with any dash', () => {
    fc.assert(
      fc.property(anyCode, (code) => {
        const shown = shownPairingCode(code);
        for (const typed of [shown, shown.toLowerCase(), shown.replace('-', ' – '), ` ${code} `]) {
          expect(readPairingCode(typed)).toEqual({ ok: true, value: code });
        }
      }),
    );
  });

  it('with a character that none has, or of another length, says which', () => {
    expect(readPairingCode('ACDE-FGH0')).toMatchObject({
      problems: [{ code: 'HALL_CODE_LETTERS', given: '0' }],
    });
    expect(readPairingCode('ACDE')).toMatchObject({ problems: [{ code: 'HALL_CODE_LENGTH', given: 4 }] });
    expect(readPairingCode('')).toMatchObject({ problems: [{ code: 'HALL_CODE_LENGTH', given: 0 }] });
  });

  it('holds every character about equally often', () => {
    const next = random(7);
    const counts = new Map<string, number>();
    const codes = 4600;
    for (let i = 0; i < codes; i += 1) {
      for (const letter of makePairingCode(next).slice(0, -1)) {
        counts.set(letter, (counts.get(letter) ?? 0) + 1);
      }
    }
    const due = (codes * (pairingLength - 1)) / pairingLetters.length;
    const square = [...pairingLetters].reduce(
      (sum, letter) => sum + ((counts.get(letter) ?? 0) - due) ** 2 / due,
      0,
    );
    // chi-squared with 22 degrees of freedom stays under 48.3 in 999 of 1000 (NIST/SEMATECH e-Handbook, 1.3.6.7.4)
    expect(square).toBeLessThan(48.3);
  });

  it('takes no byte that would make some characters likelier', () => {
    let calls = 0;
    const highest = (bytes: number): Uint8Array => {
      calls += 1;
      return new Uint8Array(bytes).fill(calls === 1 ? 255 : 0);
    };
    expect(makePairingCode(highest)).toBe(pairingLetters[0]?.repeat(pairingLength));
    expect(calls).toBe(2);
  });
});
