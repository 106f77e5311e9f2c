import { describe, expect, it } from 'vitest';
import { readBook } from './read-book.ts';

const withSetting = (setting: object) =>
  readBook({
    twinfloor: 1,
    line: {
      drives: [{ tag: '-M2', overload: { least: '4 A', most: '6.3 A', set: '4.5 A' } }],
      settings: [{ tag: 'SET-1', ...setting }],
    },
  });

const codes = (setting: object): readonly string[] => {
  const read = withSetting(setting);
  return read.ok ? [] : read.problems.map(({ code, path }) => `${code} ${path}`);
};

describe('a setting that the book adds', () => {
  it('is read in its unit, in a unit of people’s own, or as words', () => {
    expect(codes({ unit: 'mm', least: '10', most: '2 cm', value: '12.5 mm' })).toEqual([]);
    expect(codes({ unit: 'clicks', least: '1', most: '3.5 clicks', value: '2 clicks' })).toEqual([]);
    expect(codes({ value: 'hole 3 from the left', least: 'hole 1' })).toEqual([]);
  });

  it('is refused with a bound that can’t be read in its unit', () => {
    expect(codes({ unit: 'mm', least: '4 s' })).toEqual(['QUANTITY_WRONG_KIND /line/settings/0/least']);
    expect(codes({ unit: 'clicks', most: 'wide open' })).toEqual(['BOOK_WRONG_TYPE /line/settings/0/most']);
    expect(codes({ unit: 'clicks', most: '3 holes' })).toEqual(['BOOK_WRONG_TYPE /line/settings/0/most']);
  });

  it('is refused with bounds the wrong way round and with a value outside them, in whatever units', () => {
    expect(codes({ unit: 'mm', least: '3 cm', most: '20 mm' })).toEqual([
      'BOOK_MORE_THAN /line/settings/0/least',
    ]);
    expect(codes({ unit: 'mm', most: '20 mm', value: '2.1 cm' })).toEqual([
      'BOOK_MORE_THAN /line/settings/0/value',
    ]);
    expect(codes({ unit: 'mm', least: '20 mm', value: '1.9 cm' })).toEqual([
      'BOOK_MORE_THAN /line/settings/0/least',
    ]);
  });

  it('stands at a place that its thing has', () => {
    expect(codes({ on: '-M2', of: 'overload/set', value: '4600 mA' })).toEqual([]);
    expect(codes({ on: '-M2', of: 'overload/set', value: '3 s' })).toEqual([
      'QUANTITY_WRONG_KIND /line/settings/0/value',
    ]);
    expect(codes({ on: '-M2', of: 'overload/sett' })).toEqual(['BOOK_PLACE_UNKNOWN /line/settings/0/of']);
    expect(codes({ on: '-M2', of: 'overload' })).toEqual(['BOOK_PLACE_UNKNOWN /line/settings/0/of']);
  });
});
