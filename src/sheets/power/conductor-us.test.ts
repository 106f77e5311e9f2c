import fc from 'fast-check';
import { expect, it } from 'vitest';
import { runSheet } from '../frame.ts';
import { ampacityEditions, ampacityUs } from './ampacity-us.ts';
import { conductorUs, conductorUsSheet } from './conductor-us.ts';
import { usConductors, usSizes } from './us-conductors.ts';
import { temperatureColumns, usAmbientFactor, usGroupFactor } from './us-correction-factors.ts';

const place = fc
  .record({
    insulation: fc.constantFrom(...temperatureColumns),
    terminals: fc.constantFrom('60' as const, '75' as const),
    ambient: fc.double({ min: 263, max: 327, noNaN: true }),
    conductors: fc.integer({ min: 1, max: 45 }),
    edition: fc.constantFrom(...ampacityEditions),
  })
  .filter(({ insulation, terminals }) => Number(insulation) >= Number(terminals));

const allowed = (size: string, at: Parameters<typeof conductorUs>[1]): number =>
  ampacityUs(size, at.insulation, at.terminals, at.ambient, at.conductors, at.edition)!.allowed;

it('the size carries the current, and the next smaller one does not', () => {
  fc.assert(
    fc.property(fc.double({ min: 0.5, max: 500, noNaN: true }), place, (current, at) => {
      const found = conductorUs(current, at);
      if (found === undefined) return allowed('500 kcmil', at) < current;
      const smaller = usSizes[usSizes.indexOf(found.size) - 1];
      return (
        allowed(found.size, at) >= current * (1 - 1e-9) &&
        (smaller === undefined || allowed(smaller, at) < current)
      );
    }),
  );
});

it('a larger size carries more in every column of either edition, and a hotter column never less', () => {
  for (const edition of ['ampacity', 'olderAmpacity'] as const) {
    for (const [i, conductor] of usConductors.entries()) {
      expect(conductor[edition][1]).toBeGreaterThanOrEqual(conductor[edition][0]);
      expect(conductor[edition][2]).toBeGreaterThanOrEqual(conductor[edition][1]);
      const smaller = usConductors[i - 1];
      if (smaller === undefined) continue;
      for (const column of [0, 1, 2] as const) {
        expect(conductor[edition][column]).toBeGreaterThanOrEqual(smaller[edition][column]);
      }
    }
  }
});

it('ambient factors are those of the heat balance, sqrt((column - ambient)/(column - 30)), within 0.02', () => {
  for (const column of temperatureColumns) {
    for (const celsius of [10, 15, 20, 25, 30, 35, 40, 45, 50, 55]) {
      const factor = usAmbientFactor(celsius + 273.15, column)!;
      expect(Math.abs(factor - Math.sqrt((Number(column) - celsius) / (Number(column) - 30)))).toBeLessThan(
        0.02,
      );
    }
  }
});

it('an ambient on the bound of a row belongs to it, a little more to the next', () => {
  expect(usAmbientFactor(313.15, '75')).toBe(0.88);
  expect(usAmbientFactor(313.3, '75')).toBe(0.82);
  expect(usAmbientFactor(329.15, '60')).toBeUndefined();
});

it('more conductors in a raceway never carry more each', () => {
  for (let n = 1; n < 60; n += 1) expect(usGroupFactor(n + 1)).toBeLessThanOrEqual(usGroupFactor(n));
});

it('a current over the table is refused, and so is insulation cooler than its terminals', () => {
  const inputs = { current: 900, load: 'motor', insulation: '75', terminals: '75', edition: 'from-2011' };
  expect(runSheet(conductorUsSheet, inputs)).toMatchObject({
    ok: false,
    problems: [{ code: 'SHEET_BEYOND_TABLE', path: 'current' }],
  });
  expect(runSheet(conductorUsSheet, { ...inputs, current: 9, insulation: '60' })).toMatchObject({
    ok: false,
    problems: [{ code: 'SHEET_OFF_TABLE', path: 'terminals' }],
  });
});
