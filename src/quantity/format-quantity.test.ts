import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fromSi, toSi, unitsOf } from './convert.ts';
import { defaultUnit } from './default-unit.ts';
import { formatNumber, formatQuantity } from './format-quantity.ts';
import { type Kind, kinds, si } from './kinds.ts';
import { parseQuantity } from './parse-quantity.ts';

const allKinds = Object.keys(kinds) as Kind[];
const allUnits = allKinds.flatMap((kind) => unitsOf(kind).map(({ id }) => ({ kind, id })));

describe('a printed number', () => {
  it.each([
    [1050, 'en', 4, '1\u202f050'],
    [0.0864, 'en', 4, '0.0864'],
    [0.086444, 'en', 4, '0.08644'],
    [5.5, 'en', 4, '5.5'],
    [-0.2, 'en', 4, '\u22120.2'],
    [1234567, 'en', 7, '1\u202f234\u202f567'],
    [1234567, 'en', 4, '1\u202f235\u202f000'],
    [1050.5, 'de', 5, '1\u202f050,5'],
    [0.5, 'fr', 4, '0,5'],
    [0, 'en', 4, '0'],
    [-0.0, 'en', 4, '0'],
    [999.96, 'en', 4, '1\u202f000'],
    [0.00001, 'en', 4, '0.00001'],
    [0.0000012, 'en', 4, '1.2×10⁻⁶'],
    [3.21e12, 'en', 4, '3.21×10¹²'],
    [1.5, 'not a locale', 4, '1.5'],
    [1.5, 'qps', 4, '1.5'],
  ])('%f in %s to %i digits', (value, locale, digits, text) => {
    expect(formatNumber(value, locale, digits)).toBe(text);
  });
});

describe('a printed quantity', () => {
  it('has number and unit apart and joined', () => {
    expect(formatQuantity(si('rate', 1050 / 3600), 'rate', { locale: 'en' })).toEqual({
      number: '1\u202f050',
      unit: '/h',
      text: '1\u202f050/h',
    });
    expect(formatQuantity(toSi(5.5, 'gaugePressure', 'bar'), 'gaugePressure', { locale: 'en' }).text).toBe(
      '5.5\u00a0bar(g)',
    );
    expect(
      formatQuantity(toSi(5.5, 'gaugePressure', 'bar'), 'gaugePressure', { locale: 'de', system: 'us' }).text,
    ).toBe('79,77\u00a0psig');
  });
  it('shows a count whole, and a mean of counts to six digits', () => {
    const shown = (value: number): string =>
      formatQuantity(si('count', value), 'count', { locale: 'en' }).text;
    expect(shown(12345678)).toBe('12\u202f345\u202f678');
    expect(shown(996.005674003575)).toBe('996.006');
  });

  it('shows a bare gallon as a US gallon', () => {
    const read = parseQuantity('12 gal/min', 'volumeFlow', { path: '' });
    if (!read.ok) throw new Error('unread');
    expect(formatQuantity(read.value.value, 'volumeFlow', { locale: 'en', unit: read.value.unit }).text).toBe(
      '12\u00a0US gal/min',
    );
  });
  it('puts Kv before its number', () => {
    expect(formatQuantity(si('flowCoefficient', 1.2), 'flowCoefficient', { locale: 'en' }).text).toBe(
      'Kv\u00a01.2',
    );
  });
  it('is a mistake of the caller where the unit is of another kind or the value is no number', () => {
    expect(() => formatQuantity(si('length', 1), 'length', { locale: 'en', unit: 'kg' })).toThrow(RangeError);
    expect(() => formatQuantity(si('length', Number.NaN), 'length', { locale: 'en' })).toThrow(RangeError);
  });
  it('has a usual unit in each system', () => {
    for (const kind of allKinds) {
      const ids = unitsOf(kind).map(({ id }) => id);
      expect(ids, kind).toContain(defaultUnit(kind, 'metric'));
      expect(ids, kind).toContain(defaultUnit(kind, 'us'));
    }
  });
});

describe('reading what was printed', () => {
  // sizes in the unit itself that keep temperatures and absolute pressures above zero
  const numbers = fc.oneof(
    fc.double({ min: 1e-12, max: 1e12, noNaN: true }),
    fc.integer({ min: 0, max: 2_000_000 }),
    fc.integer({ min: 1, max: 99_999 }).map((n) => n / 1000),
  );
  it('gives the value to the digits shown, for every unit of every kind, in languages with either mark', () => {
    for (const { kind, id } of allUnits) {
      fc.assert(
        fc.property(
          numbers,
          fc.integer({ min: 1, max: 15 }),
          fc.constantFrom('en', 'de', 'fr', 'qps', 'pl'),
          (number, digits, locale) => {
            const value = toSi(number, kind, id);
            const shown = formatQuantity(value, kind, { locale, unit: id, digits });
            const read = parseQuantity(shown.text, kind, { path: '', locale });
            if (!read.ok) throw new Error(`${shown.text}: ${read.problems[0]?.code}`);
            expect(read.value.unit).toBe(id);
            const inUnit = fromSi(read.value.value, kind, id);
            const size = Math.max(Math.abs(number), 1e-300);
            // half a unit of the last digit shown, and the rounding of doubles (larger beside a temperature's offset)
            const step =
              0.5 * 10 ** (Math.floor(Math.log10(size)) + 1 - digits) +
              1e-12 * (size + (kind === 'temperature' ? 500 : 0));
            expect(Math.abs(inUnit - number)).toBeLessThanOrEqual(step * 1.000001);
          },
        ),
        { numRuns: 20 },
      );
    }
  });
  it('also reads the text that a book would store, without a language, where the mark is the point', () => {
    for (const { kind, id } of allUnits) {
      for (const number of [1.05, 1050, 12.345, 0.0864]) {
        const shown = formatQuantity(toSi(number, kind, id), kind, { locale: 'en', unit: id, digits: 6 });
        const read = parseQuantity(shown.text, kind, { path: '' });
        expect(read.ok && fromSi(read.value.value, kind, id), shown.text).toBeCloseTo(number, 9);
      }
    }
  });
});
