import { describe, expect, it } from 'vitest';
import type { Kind } from './kinds.ts';
import { parseEntry } from './parse-entry.ts';
import { readEntry } from './read-entry.ts';

const entry = (text: string, kind: Kind) => {
  const result = parseEntry(text, kind, { path: '/x' });
  return result.ok ? result.value : result.problems.map(({ code }) => code);
};
const reading = (given: unknown, kind: Kind) => {
  const result = readEntry(given, kind, { path: '/x' });
  return result.ok ? result.value : result.problems.map(({ code, path }) => `${path} ${code}`);
};

describe('a range', () => {
  it.each([
    '2 to 3 bar',
    '2 .. 3 bar',
    '2..3 bar',
    '2 bar to 3 bar',
    '2 bar to 3',
    '2 – 3 bar',
    '2 … 3 bar',
    '2 bar to 300 kPa',
  ])('%s has hard ends and its middle as value', (text) => {
    expect(entry(text, 'gaugePressure')).toMatchObject({ value: 250000, low: 200000, high: 300000 });
  });
  it('may lie below zero', () => {
    expect(entry('-3 to -2 degC', 'temperature')).toMatchObject({ low: 270.15, high: 271.15 });
  });
  it('is refused the wrong way round, and in the words of the half that is wrong', () => {
    expect(entry('3 to 2 bar', 'gaugePressure')).toEqual(['QUANTITY_RANGE_REVERSED']);
    expect(entry('2 to 3 kg', 'gaugePressure')).toEqual(['QUANTITY_WRONG_KIND']);
    expect(entry('2 to x', 'gaugePressure')).toEqual(['QUANTITY_UNREADABLE']);
  });
});

describe('a spread', () => {
  it.each([
    '2.1 ± 0.1 bar',
    '2.1 +- 0.1 bar',
    '2.1 +/- 0.1 bar',
    '2.1 bar ± 0.1 bar',
    '2.1 bar ± 100 mbar',
    '(2.1 ± 0.1) bar',
    '2.1 bar ± 0.1',
  ])('%s is a half width', (text) => {
    const read = entry(text, 'gaugePressure');
    expect(read).toMatchObject({ value: 210000, unit: 'bar(g)' });
    expect((read as { spread: number }).spread).toBeCloseTo(10000, 8);
  });
  it('of a temperature is a difference', () => {
    expect(entry('20 ± 0.5 degC', 'temperature')).toMatchObject({ value: 293.15, spread: 0.5 });
    expect(entry('20 degC ± 9 degF', 'temperature')).toMatchObject({ value: 293.15, spread: 5 });
    expect(entry('20 degC ± 2 %', 'temperature')).toEqual(['QUANTITY_WRONG_KIND']);
  });
  it('in per cent is a share of the value, but points where the value is itself in per cent', () => {
    expect(entry('2 bar ± 5 %', 'gaugePressure')).toMatchObject({ spread: 10000 });
    expect(entry('80 % ± 2 %', 'ratio')).toMatchObject({ value: 0.8, spread: 0.02 });
  });
  it('is never negative', () => {
    expect(entry('2.1 ± -0.1 bar', 'gaugePressure')).toEqual(['QUANTITY_SPREAD_NEGATIVE']);
  });
});

describe('a quantity of a book', () => {
  it('stands as stated unless it says otherwise', () => {
    expect(reading('80 psi', 'gaugePressure')).toMatchObject({
      shape: 'exact',
      standing: 'stated',
      unit: 'psig',
    });
  });
  it('with a spread has its ends at 95 % and a standard deviation of 1/1.96 of it', () => {
    const read = reading(
      { value: '412 /L', spread: '3 /L', standing: 'measured', by: 'A. Fitter', on: '2026-11-02' },
      'pulseDensity',
    );
    expect(read).toMatchObject({
      value: 412000,
      low: 409000,
      high: 415000,
      shape: 'spread',
      standing: 'measured',
      by: 'A. Fitter',
      on: '2026-11-02',
    });
    // 97.5 % point of the normal distribution, 1.95996: any table of it
    expect((read as { sd: number }).sd).toBeCloseTo(3000 / 1.95996, 1);
  });
  it('as a pair is a range, even between its ends', () => {
    const read = reading({ value: ['2 bar', '3 bar'] }, 'gaugePressure');
    expect(read).toMatchObject({ low: 200000, high: 300000, shape: 'range' });
    // JCGM 100:2008, 4.3.7: half width over the root of three (memory)
    expect((read as { sd: number }).sd).toBeCloseTo(50000 / 1.7320508, 3);
    expect(reading({ value: ['2', '3 bar'] }, 'gaugePressure')).toEqual(read);
  });
  it('whose spread or range has no width is exact', () => {
    expect(reading({ value: '2 bar', spread: '0 bar' }, 'gaugePressure')).toMatchObject({ shape: 'exact' });
    expect(reading('2 to 2 bar', 'gaugePressure')).toMatchObject({ shape: 'exact', value: 200000 });
  });
  it('may be a plain number only where the kind has a bare unit', () => {
    expect(reading(4, 'count')).toMatchObject({ value: 4, shape: 'exact' });
    expect(reading(4, 'length')).toEqual(['/x QUANTITY_FORM']);
    expect(reading(Number.NaN, 'count')).toEqual(['/x QUANTITY_NOT_FINITE']);
  });
  it('tells every problem at once, each with the path of its field', () => {
    expect(reading({ value: '2 kg', standing: 'guessed', by: 3 }, 'gaugePressure')).toEqual([
      '/x/standing QUANTITY_STANDING',
      '/x/by QUANTITY_FORM',
      '/x/value QUANTITY_WRONG_KIND',
    ]);
    expect(reading({ value: '2 bar', spread: '3 kg' }, 'gaugePressure')).toEqual([
      '/x/spread QUANTITY_WRONG_KIND',
    ]);
  });
  it('has one spread at most, and none beside a range', () => {
    expect(reading({ value: '2 ± 0.1 bar', spread: '0.1 bar' }, 'gaugePressure')).toEqual([
      '/x/spread QUANTITY_SPREAD_TWICE',
    ]);
    expect(reading({ value: '2 to 3 bar', spread: '0.1 bar' }, 'gaugePressure')).toEqual([
      '/x/spread QUANTITY_SPREAD_ON_RANGE',
    ]);
    expect(reading({ value: ['2 bar', '3 bar'], spread: '0.1 bar' }, 'gaugePressure')).toEqual([
      '/x/spread QUANTITY_SPREAD_ON_RANGE',
    ]);
  });
  it('does not reach below absolute zero or vacuum', () => {
    expect(reading('1 ± 2 K', 'temperature')).toEqual(['/x QUANTITY_BELOW_ABSOLUTE_ZERO']);
    expect(reading('0.1 ± 0.2 bar', 'absolutePressure')).toEqual(['/x QUANTITY_BELOW_VACUUM']);
    expect(reading({ value: '0.1 bar', spread: '0.2 bar' }, 'absolutePressure')).toEqual([
      '/x QUANTITY_BELOW_VACUUM',
    ]);
  });
  it('is text or the object, nothing else', () => {
    for (const given of [
      null,
      undefined,
      true,
      [],
      ['2 bar', '3 bar'],
      {},
      { value: 3 },
      { value: ['2 bar'] },
      { value: {} },
    ]) {
      expect(readEntry(given, 'gaugePressure', { path: '/x' }).ok).toBe(false);
    }
  });
});
