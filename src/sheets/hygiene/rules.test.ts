import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { causticFromFit, causticFromTable } from './caustic-equivalent.ts';
import { meetsCausticRule } from './caustic-rule.ts';
import { causticRule, causticRuleKeys, statesFigures } from './caustic-rules.ts';
import { meetsAlternative } from './sanitising-rule.ts';
import {
  mediaOfRule,
  sanitisingAlternatives,
  sanitisingMedia,
  sanitisingRuleKeys,
  sanitisingRuleSources,
} from './sanitising-rules.ts';

const given = fc.record({
  temperature: fc.double({ min: 275, max: 400, noNaN: true }),
  time: fc.double({ min: 0, max: 2000, noNaN: true }),
  concentration: fc.double({ min: 0, max: 0.3, noNaN: true }),
  acidity: fc.double({ min: 0, max: 14, noNaN: true }),
});
const every = sanitisingRuleKeys.flatMap((rule) =>
  sanitisingMedia.flatMap((medium) =>
    sanitisingAlternatives(rule, medium).map((alternative) => ({ rule, alternative })),
  ),
);

describe('sanitising rules', () => {
  it('every text has a row, and every row carries the mark of its text', () => {
    for (const rule of sanitisingRuleKeys) expect(mediaOfRule(rule).length).toBeGreaterThan(0);
    for (const { rule, alternative } of every)
      expect(alternative.mark).toBe(sanitisingRuleSources[rule].mark);
  });

  it('every alternative states at least one figure', () => {
    for (const { alternative } of every) {
      const { object: _object, mark: _mark, ...figures } = alternative;
      expect(Object.keys(figures).length).toBeGreaterThan(0);
    }
  });

  it('an alternative is met by its own figures and by nothing a thousandth under one of them', () => {
    for (const { alternative: a } of every) {
      const just = {
        temperature: a.leastTemperature ?? 280,
        time: a.leastTime ?? 0,
        concentration: a.leastConcentration ?? 0,
        acidity: a.mostAcidity ?? 14,
      };
      expect(meetsAlternative(a, just)).toBe(true);
      if (a.leastTemperature !== undefined) {
        expect(meetsAlternative(a, { ...just, temperature: 0.999 * just.temperature })).toBe(false);
      }
      if (a.leastTime !== undefined)
        expect(meetsAlternative(a, { ...just, time: 0.999 * just.time })).toBe(false);
      if (a.leastConcentration !== undefined) {
        expect(meetsAlternative(a, { ...just, concentration: 0.999 * just.concentration })).toBe(false);
      }
      if (a.mostAcidity !== undefined) {
        expect(meetsAlternative(a, { ...just, acidity: just.acidity + 0.01 })).toBe(false);
      }
    }
  });

  it('hotter, longer and stronger never turns a met alternative into an unmet one', () => {
    fc.assert(
      fc.property(fc.constantFrom(...every), given, (one, i) => {
        const more = {
          ...i,
          temperature: i.temperature + 5,
          time: i.time + 60,
          concentration: 2 * i.concentration,
        };
        expect(meetsAlternative(one.alternative, more) || !meetsAlternative(one.alternative, i)).toBe(true);
      }),
    );
  });
});

describe('caustic codes', () => {
  it('only Nevada leaves its figures to a commission', () => {
    expect(causticRuleKeys.filter((key) => !statesFigures(causticRule(key)))).toEqual(['NV 584.2511']);
  });

  it('hotter and longer never turns a met code into an unmet one', () => {
    const bath = fc.record({
      caustic: fc.double({ min: 0, max: 0.05, noNaN: true }),
      alkali: fc.double({ min: 0, max: 0.05, noNaN: true }),
      time: fc.double({ min: 0, max: 600, noNaN: true }),
      temperature: fc.double({ min: 300, max: 350, noNaN: true }),
    });
    fc.assert(
      fc.property(fc.constantFrom(...causticRuleKeys), bath, (key, i) => {
        const more = { ...i, time: i.time + 60, temperature: i.temperature + 5 };
        expect(meetsCausticRule(causticRule(key), more) || !meetsCausticRule(causticRule(key), i)).toBe(true);
      }),
    );
  });

  it('California lies under the table of equal effect and Oregon over it', () => {
    const at = (fahrenheit: number) => causticFromTable(((fahrenheit - 32) * 5) / 9 + 273.15, 300);
    expect(causticRule('CA HSC 112080').leastCaustic!).toBeLessThan(at(120));
    expect(causticRule('OR 603-021-0720').leastCaustic!).toBeGreaterThan(at(130));
  });

  it('hotter or longer asks less caustic, and the fit stays within 2.5 % of the table between its figures', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 322.04, max: 349.81, noNaN: true }),
        fc.double({ min: 180, max: 420, noNaN: true }),
        (t, time) => {
          const here = causticFromTable(t, time);
          expect(causticFromTable(Math.min(349.81, t + 2), time)).toBeLessThanOrEqual(here);
          expect(causticFromTable(t, Math.min(420, time + 20))).toBeLessThanOrEqual(here);
          expect(Math.abs(causticFromFit(t, time) / here - 1)).toBeLessThan(0.025);
        },
      ),
    );
  });
});
