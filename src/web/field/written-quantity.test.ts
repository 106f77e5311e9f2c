import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parseQuantity } from '../../quantity/index.ts';
import { writtenQuantity } from './written-quantity.ts';

const of = { kind: 'resistance', unit: 'ohm', path: 'x' } as const;

describe('a number as it was typed', () => {
  it.each([
    ['en', '0,005', '0.005 ohm', 0.005],
    ['en', '0.005', '0.005 ohm', 0.005],
    ['en', '1,234', '1234 ohm', 1234],
    ['en', '0,500 Mohm', '0.500 Mohm', 500_000],
    ['de', '1.5', '1.5 ohm', 1.5],
    ['de', '0.005', '0.005 ohm', 0.005],
    ['de', '0,005', '0.005 ohm', 0.005],
    ['de', '1.234,5', '1234.5 ohm', 1234.5],
    ['fr', '1\u202f234,5', '1234.5 ohm', 1234.5],
    ['de-CH', "1'234.5", '1234.5 ohm', 1234.5],
  ])('%s: %s is written down as %s', (locale, text, written, value) => {
    expect(writtenQuantity({ ...of, locale, text })).toEqual({ ok: true, value: { text: written, value } });
  });

  it('is the same number for a reader in any language, however it was parted', () => {
    fc.assert(
      fc.property(
        fc.constantFrom('en-GB', 'de-DE', 'fr-FR', 'sv-SE', 'de-CH', 'es-ES', 'it-IT'),
        fc.integer({ min: -99_999_999, max: 99_999_999 }),
        fc.integer({ min: 0, max: 4 }),
        (locale, digits, decimals) => {
          const value = Number((digits / 10 ** decimals).toFixed(decimals));
          const text = value.toLocaleString(locale, { minimumFractionDigits: decimals });
          const written = writtenQuantity({ ...of, locale, text });
          if (!written.ok) {
            // `1.050` of a reader whose own mark is the comma could be either, and is asked again
            expect(written.problems.map(({ code }) => code)).toEqual(['QUANTITY_AMBIGUOUS_NUMBER']);
            expect(text).toMatch(/^-?\d{1,3}\.\d{3}$/);
            return;
          }
          const read = parseQuantity(written.value.text, 'resistance', { path: 'x' });
          expect([written.value.value, read.ok && read.value.value]).toEqual([value, value]);
        },
      ),
    );
  });
});
