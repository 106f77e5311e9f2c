import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { operatingFlow } from './operating-point.ts';
import { fitPumpCurve, pumpHead } from './pump-curve.ts';

const points = fc.array(
  fc.record({
    flow: fc.double({ min: 0, max: 0.05, noNaN: true }),
    head: fc.double({ min: 0, max: 100, noNaN: true }),
  }),
  { minLength: 1, maxLength: 8 },
);

it('a fitted curve never rises, whatever the points', () => {
  fc.assert(
    fc.property(points, fc.double({ min: 0, max: 0.1, noNaN: true }), (given, q) => {
      const curve = fitPumpCurve(given);
      return (
        curve.factor >= 0 && curve.exponent > 0 && pumpHead(curve, q * 1.1, 1) <= pumpHead(curve, q, 1) + 1e-9
      );
    }),
  );
});

it('three falling points with one at no flow are met exactly, in any order', () => {
  const given = [
    { flow: 0.004, head: 14 },
    { flow: 0, head: 32 },
    { flow: 0.002, head: 28 },
  ];
  const curve = fitPumpCurve(given);
  expect(curve.residual).toBeLessThan(1e-12);
  for (const { flow, head } of given) expect(pumpHead(curve, flow, 1)).toBeCloseTo(head, 10);
});

it('points that lie on a curve are found again without one at no flow', () => {
  const curve = fitPumpCurve([0.5, 1, 2, 3, 4].map((q) => ({ flow: q * 1e-3, head: 30 - 0.9 * q ** 1.8 })));
  expect(curve.shutOffHead).toBeCloseTo(30, 4);
  expect(curve.exponent).toBeCloseTo(1.8, 4);
});

it('at another speed every point goes to s times the flow and s squared times the head', () => {
  const curve = fitPumpCurve([{ flow: 0.003, head: 24 }]);
  for (const s of [0.7, 1.2]) {
    expect(pumpHead(curve, s * 0.003, s)).toBeCloseTo(s * s * 24, 10);
    expect(pumpHead(curve, 0, s)).toBeCloseTo(s * s * 32, 10);
  }
  expect(pumpHead(curve, 0, 0)).toBe(0);
});

it('an empty list of points is a mistake of the caller', () => {
  expect(() => fitPumpCurve([])).toThrow(RangeError);
});

describe('the operating point', () => {
  const curve = fitPumpCurve([
    { flow: 0, head: 32 },
    { flow: 0.002, head: 28 },
    { flow: 0.004, head: 14 },
  ]);

  it('does not go with the speed where there is static head', () => {
    const system = (q: number): number => 15 + 1.2e6 * q * q;
    const rated = operatingFlow(curve, 1, system);
    const faster = operatingFlow(curve, 1.2, system);
    expect(faster / rated).toBeGreaterThan(1.25);
  });

  it('is nothing below the speed that lifts at all: the root of static over shut-off head', () => {
    const system = (q: number): number => 15 + 1.2e6 * q * q;
    expect(operatingFlow(curve, 0.684, system)).toBe(0);
    expect(operatingFlow(curve, 0.686, system)).toBeGreaterThan(0);
  });

  it('moves by 2 % with the form of the curve: published points, 12.05 against 12.32 ft3/s', () => {
    const system = (q: number): number => 9.144 + 60.82 * q * q;
    const through = fitPumpCurve([
      { flow: 0, head: 24.6888 },
      { flow: 0.315450982, head: 18.288 },
      { flow: 0.49525804174, head: 6.096 },
    ]);
    const square = { shutOffHead: 25.13604891, factor: 76.38086428, exponent: 2, residual: 0 };
    const ratio = operatingFlow(through, 1, system) / operatingFlow(square, 1, system);
    expect(ratio).toBeCloseTo(12.324 / 12.051, 3);
  });
});
