import fc from 'fast-check';
import { expect, it } from 'vitest';
import { exactDrop, lineDrop } from './voltage-drop.ts';

const run = fc.record({
  current: fc.double({ min: 0.1, max: 200, noNaN: true }),
  length: fc.double({ min: 1, max: 300, noNaN: true }),
  r: fc.double({ min: 1e-5, max: 5e-3, noNaN: true }),
  x: fc.double({ min: 0, max: 3e-4, noNaN: true }),
  cos: fc.double({ min: 0.3, max: 1, noNaN: true }),
});

it('the load voltage with the drop along the run gives back the source, as complex numbers', () => {
  fc.assert(
    fc.property(run, ({ current, length, r, x, cos }) => {
      const drop = exactDrop(400, current, length, r, x, cos, 'three-phase');
      fc.pre(!Number.isNaN(drop));
      const v = (400 - drop) / Math.sqrt(3);
      const sin = Math.sqrt(1 - cos * cos);
      const re = v + current * length * (r * cos + x * sin);
      const im = current * length * (x * cos - r * sin);
      return Math.abs(Math.hypot(re, im) * Math.sqrt(3) - 400) < 1e-6;
    }),
  );
});

it('the usual formula stays within 2 % of the exact drop while that is under 5 % and the run mostly resistance', () => {
  fc.assert(
    fc.property(run, ({ current, length, r, cos }) => {
      const x = 0.1 * r;
      const exact = exactDrop(400, current, length, r, x, Math.max(cos, 0.7), 'three-phase');
      fc.pre(exact > 0.1 && exact < 20);
      const usual = lineDrop(current, length, r, x, Math.max(cos, 0.7), 'three-phase');
      return Math.abs(usual / exact - 1) < 0.02;
    }),
  );
});

it('twice the length or the current drops twice as much', () => {
  expect(lineDrop(20, 60, 1e-3, 1e-4, 0.8, 'three-phase')).toBeCloseTo(
    2 * lineDrop(10, 60, 1e-3, 1e-4, 0.8, 'three-phase'),
    12,
  );
  expect(lineDrop(20, 60, 1e-3, 1e-4, 0.8, 'single-phase')).toBeCloseTo(
    2 * lineDrop(20, 30, 1e-3, 1e-4, 0.8, 'single-phase'),
    12,
  );
});

it('a current that the run cannot carry has no exact drop', () => {
  expect(exactDrop(400, 1000, 1000, 1e-3, 1e-4, 0.8, 'three-phase')).toBeNaN();
});
