import { describe, expect, it } from 'vitest';
import { keptFields, keptTexts } from './kept-texts.ts';
import { measuredOf, measuredTexts } from './measured-allowances.ts';

describe('what a browser kept', () => {
  it('counts as far as it has the shape that is wanted', () => {
    expect(keptTexts({ gross: '2.98', tare: 3, lane: null })).toEqual({ gross: '2.98' });
    for (const other of [undefined, null, 'text', 7, ['text']]) {
      expect(keptFields(other).gross).toBeUndefined();
    }
    expect(measuredTexts({ 'valve-air': '3 %', 'kv-product': 4, another: '5 %' })).toEqual({
      'valve-air': '3 %',
    });
    expect(measuredTexts('valve-air')).toEqual({});
  });
});

describe('a measured allowance', () => {
  it('is a share with the spread that holds the truth with 95 %', () => {
    const { measured } = measuredOf({ 'valve-air': '3 % ± 1 %', 'meter-flow': '-0,2 %' }, 'de');
    expect(measured!['valve-air']!.shift).toBeCloseTo(0.03, 12);
    // 1.95996 standard deviations on each side
    expect(measured!['valve-air']!.deviation).toBeCloseTo(0.01 / 1.959964, 8);
    expect(measured!['meter-flow']).toEqual({ shift: -0.002, deviation: 0 });
  });

  it('that can’t be read takes the place of nothing', () => {
    expect(measuredOf({ 'valve-air': 'some' }, 'en')).toEqual({});
    expect(measuredOf({}, 'en')).toEqual({});
  });
});
