import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkValue } from './check-character.ts';
import { findCode } from './find-code.ts';
import { alphabet, codeOfTag, isCode, plainCode, printedCode, scanText } from './join-code.ts';

const checkOf = (text: string, characters: string, radix: number): string =>
  characters[
    checkValue(
      [...text].map((letter) => characters.indexOf(letter)),
      characters.length,
      radix,
    )
  ]!;

describe('a check character', () => {
  it('is that of ISO/IEC 7064 MOD 11-2', () => {
    // read: two identifiers of researchers with their check character, in a published function of a university press
    expect(checkOf('000000021825009', '0123456789X', 2)).toBe('7');
    expect(checkOf('000000021694233', '0123456789X', 2)).toBe('X');
    // read: samples of the tests of an open library of check digits, cdigit 2.6.6, mod11_2
    for (const [body, check] of [
      ['001175717748247', '6'],
      ['986596515101003', 'X'],
      ['40274887937'.slice(0, -1), '7'],
      ['8388', 'X'],
    ] as const) {
      expect(checkOf(body, '0123456789X', 2)).toBe(check);
    }
  });
  it('is that of ISO/IEC 7064 MOD 37-2', () => {
    // read: example in the documentation of cdigit 2.0.0
    expect(checkOf('12CD', '0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ*', 2)).toBe('6');
  });
});

const anyCode = fc.string({ minLength: 1, maxLength: 30 }).map(codeOfTag);

describe('the code of a join', () => {
  it('has no two characters that look alike, and as many as a prime', () => {
    expect(new Set(alphabet).size).toBe(23);
    for (const alike of ['0OQD', '1IL', 'UV', '2Z', '5S', '6G', '8B']) {
      expect([...alike].filter((letter) => alphabet.includes(letter)).length).toBeLessThan(2);
    }
  });
  it('fits no more once any one character is another, or any two neighbours are swapped', () => {
    fc.assert(
      fc.property(anyCode, (code) => {
        const slips = [...code].flatMap((_, at) => {
          const [before, after] = [code.slice(0, at), code.slice(at + 1)];
          return [
            ...[...alphabet].map((other) => before + other + after),
            `${before}${after.slice(0, 1)}${code[at]}${after.slice(1)}`,
          ];
        });
        expect(isCode(code)).toBe(true);
        expect(slips.filter((slip) => slip !== code && isCode(slip))).toEqual([]);
      }),
      { numRuns: 300 },
    );
  });
  it('is held off by every place and pair of characters, not only by those that were drawn', () => {
    // the sum is linear: a change of one place by d moves it by d 2^i, a swap by (a - b)(2^(i+1) - 2^i), mod 23
    for (let i = 0; i < 6; i += 1) {
      for (let d = 1; d < 23; d += 1) {
        expect((d * 2 ** i) % 23).not.toBe(0);
        expect((d * (2 ** (i + 1) - 2 ** i)) % 23).not.toBe(0);
      }
    }
  });
  it('hangs on its own tag alone', () => {
    expect(codeOfTag('J-1')).toBe(codeOfTag('J-1'));
    expect(codeOfTag('J-1')).not.toBe(codeOfTag('J-2'));
  });
});

describe('a code that was typed', () => {
  const joins = ['J-1', 'J-2', 'J-3'].map((tag) => ({ tag, code: codeOfTag(tag) }));
  const [first] = joins;
  it('is found however it is written', () => {
    const code = first!.code;
    for (const typed of [
      scanText(code),
      printedCode(code),
      code.toLowerCase(),
      ` ${code.slice(0, 2)} ${code.slice(2)} `,
    ]) {
      expect(findCode(typed, joins)).toEqual({ is: 'found', join: 'J-1', code: printedCode(code) });
    }
    expect(plainCode('z5gb')).toBe('2568');
  });
  it('settles nothing where two labels bear it: both are named', () => {
    const twin = { tag: 'J-9', code: first!.code };
    expect(findCode(first!.code, [...joins, twin])).toMatchObject({
      is: 'shared',
      nearest: [{ join: 'J-1' }, { join: 'J-9' }],
    });
  });
  it('says that it is mistyped and offers the nearest, one slip away', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...joins),
        fc.nat(5),
        fc.constantFrom(...alphabet),
        ({ tag, code }, at, letter) => {
          const typed = code.slice(0, at) + letter + code.slice(at + 1);
          const found = findCode(typed, joins);
          if (typed === code) expect(found.is).toBe('found');
          else {
            expect(found.is).toBe('mistyped');
            expect(found.is === 'found' ? [] : found.nearest.map(({ join }) => join)).toContain(tag);
          }
        },
      ),
    );
  });
  it('says that no join of the book has it where it fits', () => {
    expect(findCode(codeOfTag('of another line'), joins).is).toBe('unknown');
    expect(findCode('', joins)).toEqual({ is: 'mistyped', nearest: [] });
  });
});
