import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { chickWatsonLogs, chickWatsonTime } from './chick-watson.ts';
import { fittedLine } from './chick-watson-rate.ts';
import { ctAnswer } from './ct-answer.ts';
import { decimalTime } from './d-value.ts';
import { giardiaCt } from './giardia-chlorine.ts';
import { giardiaRegression } from './giardia-regression.ts';
import { giardiaAcidities, giardiaChlorine, giardiaTables, giardiaTemperatures } from './giardia-table.ts';
import { hypochlorousShare } from './hocl-fraction.ts';
import { equivalentTime } from './lethality.ts';
import { tableCt, virusTable } from './virus-chlorine.ts';
import { zValue } from './z-value.ts';

const kelvin = fc.double({ min: 273.65, max: 298.15, noNaN: true });
const acidity = fc.double({ min: 6, max: 9, noNaN: true });
const chlorine = fc.double({ min: 0.4e-3, max: 3e-3, noNaN: true });

describe('the Giardia table', () => {
  it('gives every printed figure either way', () => {
    giardiaTemperatures.forEach((celsius, t) => {
      giardiaChlorine.forEach((milligrams, c) => {
        giardiaAcidities.forEach((pH, p) => {
          const printed = giardiaTables[t]![c]![p]!;
          for (const lookUp of ['cautious', 'interpolated'] as const) {
            expect(giardiaCt(celsius + 273.15, pH, milligrams / 1000, lookUp) / 0.06).toBeCloseTo(printed, 9);
          }
        });
      });
    });
  });

  it('falls with temperature, rises with pH, and never falls with chlorine as it is printed', () => {
    giardiaTables.forEach((table, t) => {
      table.forEach((row, c) => {
        row.forEach((ct, p) => {
          if (t > 0) expect(ct).toBeLessThan(giardiaTables[t - 1]![c]![p]!);
          if (c > 0) expect(ct).toBeGreaterThanOrEqual(table[c - 1]![p]!);
          if (p > 0) expect(ct).toBeGreaterThan(row[p - 1]!);
        });
      });
    });
  });

  it('the cautious look-up never asks less than the straight line between', () => {
    fc.assert(
      fc.property(kelvin, acidity, chlorine, (t, p, c) => {
        expect(giardiaCt(t, p, c, 'cautious')).toBeGreaterThanOrEqual(
          giardiaCt(t, p, c, 'interpolated') * (1 - 1e-9),
        );
      }),
    );
  });

  it('warmer water never asks more, more alkaline water never less', () => {
    fc.assert(
      fc.property(kelvin, acidity, chlorine, (t, p, c) => {
        for (const lookUp of ['cautious', 'interpolated'] as const) {
          const here = giardiaCt(t, p, c, lookUp);
          expect(giardiaCt(Math.min(298.15, t + 3), p, c, lookUp)).toBeLessThanOrEqual(here * (1 + 1e-9));
          expect(giardiaCt(t, Math.min(9, p + 0.4), c, lookUp)).toBeGreaterThanOrEqual(here * (1 - 1e-9));
        }
      }),
    );
  });

  it('the regression lies nowhere more than 0.1 % under the table, and at most a fifth over it', () => {
    fc.assert(
      fc.property(kelvin, acidity, chlorine, (t, p, c) => {
        const over = giardiaRegression(t, p, c, 3) / giardiaCt(t, p, c, 'interpolated');
        expect(over).toBeGreaterThan(0.999);
        expect(over).toBeLessThan(1.2);
      }),
    );
  });
});

it('viruses ask less in warmer water and more at pH 10', () => {
  fc.assert(
    fc.property(kelvin, (t) => {
      const [neutral, alkaline] = [7, 10].map((p) => tableCt(virusTable(p), t, 'interpolated'));
      expect(alkaline).toBeGreaterThan(neutral!);
      expect(tableCt(virusTable(7), Math.min(298.15, t + 2), 'interpolated')).toBeLessThanOrEqual(neutral!);
    }),
  );
});

it('the time that wanted logs ask reaches these logs', () => {
  const positive = fc.double({ min: 0.01, max: 100, noNaN: true });
  fc.assert(
    fc.property(positive, positive, positive, (table, residual, wanted) => {
      const { neededTime } = ctAnswer(table, 3, wanted, residual, 0);
      expect(ctAnswer(table, 3, wanted, residual, neededTime).reached / wanted).toBeCloseTo(1, 12);
      expect(chickWatsonLogs(table, residual, chickWatsonTime(table, residual, wanted)) / wanted).toBeCloseTo(
        1,
        12,
      );
    }),
  );
});

it('a line through points of a line finds it', () => {
  const number = fc.double({ min: -100, max: 100, noNaN: true });
  fc.assert(
    fc.property(number, number, (slope, intercept) => {
      const x = [0, 1, 3, 7];
      const line = fittedLine(
        x,
        x.map((at) => slope * at + intercept),
      );
      expect(line.slope).toBeCloseTo(slope, 9);
      expect(line.intercept).toBeCloseTo(intercept, 9);
    }),
  );
});

it('hypochlorous acid and hypochlorite are equal at the pKa, and a pH more leaves less', () => {
  expect(hypochlorousShare(-Math.log10(2.7e-8))).toBeCloseTo(0.5, 12);
  fc.assert(
    fc.property(fc.double({ min: 0, max: 13, noNaN: true }), (pH) => {
      expect(hypochlorousShare(pH + 1)).toBeLessThan(hypochlorousShare(pH));
    }),
  );
});

describe('lethality', () => {
  const course = fc.array(fc.double({ min: 320, max: 370, noNaN: true }), { minLength: 2, maxLength: 12 });
  const clock = (n: number): number[] => Array.from({ length: n }, (_, i) => 10 * i);

  it('a course held still is its time by the rate there', () => {
    fc.assert(
      fc.property(fc.double({ min: 320, max: 370, noNaN: true }), (t) => {
        const held = equivalentTime([0, 60], [t, t], 353.15, 10, 0);
        expect(held / (60 / decimalTime(1, 353.15, 10, t))).toBeCloseTo(1, 9);
      }),
    );
  });

  it('grows with every temperature, and never falls when a later reading is added', () => {
    fc.assert(
      fc.property(course, fc.double({ min: 320, max: 370, noNaN: true }), (temperatures, counts) => {
        const times = clock(temperatures.length);
        const here = equivalentTime(times, temperatures, 353.15, 10, counts);
        const warmer = temperatures.map((t) => t + 1);
        expect(equivalentTime(times, warmer, 353.15, 10, counts)).toBeGreaterThanOrEqual(here * (1 - 1e-9));
        const longer = [...temperatures, 300];
        expect(equivalentTime(clock(longer.length), longer, 353.15, 10, counts)).toBeGreaterThanOrEqual(
          here * (1 - 1e-9),
        );
      }),
    );
  });

  it('the trapezoid of the rate is never less than the rate of the mean temperature', () => {
    fc.assert(
      fc.property(course, (temperatures) => {
        const times = clock(temperatures.length);
        const mean = temperatures
          .slice(1)
          .map((t, i) => 10 * 10 ** ((0.5 * (t + temperatures[i]!) - 353.15) / 10))
          .reduce((a, b) => a + b, 0);
        expect(equivalentTime(times, temperatures, 353.15, 10, 0)).toBeGreaterThanOrEqual(mean * (1 - 1e-12));
      }),
    );
  });

  it('only the part of a rise above the least temperature counts', () => {
    // 40 to 80 degC in 100 s: 62.5 s lie below 65 degC
    const rise = equivalentTime([0, 100], [313.15, 353.15], 353.15, 10, 338.15);
    expect(rise).toBeCloseTo(37.5 * 0.5 * (1 + 10 ** -1.5), 4);
  });

  it('z from two times gives the second time back', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1.1, max: 1e4, noNaN: true }),
        fc.double({ min: 1, max: 50, noNaN: true }),
        (fall, by) => {
          const z = zValue({ colder: 340, dColder: 600, warmer: 340 + by, dWarmer: 600 / fall });
          expect((decimalTime(600, 340, z, 340 + by) * fall) / 600).toBeCloseTo(1, 9);
        },
      ),
    );
  });
});
