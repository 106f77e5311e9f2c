import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { heatUpPower } from './heat-up-power.ts';
import { heatCeiling, heatUpTime } from './heat-up-time.ts';

const capacity = fc.double({ min: 1e3, max: 1e8, noNaN: true });
const start = fc.double({ min: 275, max: 320, noNaN: true });
const rise = fc.double({ min: 1, max: 50, noNaN: true });
const loss = fc.double({ min: 0, max: 500, noNaN: true });
const time = fc.double({ min: 60, max: 1e6, noNaN: true });

describe('heat-up', () => {
  it('a power for a time takes that time', () => {
    fc.assert(
      fc.property(capacity, start, rise, loss, time, (C, T0, dT, U, t) => {
        const power = heatUpPower(C, T0, T0 + dT, t, U, 290);
        const y = (U * t) / C;
        // close to the ceiling the time hangs on the last digit of the power
        fc.pre(power > 0 && y < 12);
        expect(heatUpTime(C, T0, T0 + dT, power, U, 290) / t).toBeCloseTo(1, 5);
      }),
    );
  });

  it('a loss makes it longer, and more power makes it shorter, where the room is colder', () => {
    fc.assert(
      fc.property(capacity, start, rise, fc.double({ min: 1, max: 500, noNaN: true }), (C, T0, dT, U) => {
        const ambient = T0 - 1;
        const power = 1.5 * U * (T0 + dT - ambient);
        const t = heatUpTime(C, T0, T0 + dT, power, U, ambient);
        expect(t).toBeGreaterThan(heatUpTime(C, T0, T0 + dT, power, 0, ambient));
        expect(t).toBeGreaterThan(heatUpTime(C, T0, T0 + dT, 2 * power, U, ambient));
      }),
    );
  });

  it('the ceiling itself is never reached, a little below it is', () => {
    fc.assert(
      fc.property(capacity, fc.double({ min: 1, max: 500, noNaN: true }), (C, U) => {
        const power = 30 * U;
        const ceiling = heatCeiling(power, U, 290);
        expect(heatUpTime(C, 285, ceiling + 1e-6, power, U, 290)).toBe(Number.POSITIVE_INFINITY);
        expect(heatUpTime(C, 285, ceiling - 0.01, power, U, 290)).toBeLessThan(Number.POSITIVE_INFINITY);
      }),
    );
  });
});
