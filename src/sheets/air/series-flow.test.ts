import fc from 'fast-check';
import { expect, it } from 'vitest';
import { restrictionFlow } from './restriction-flow.ts';
import { chainFlow, chainPressures } from './series-flow.ts';

const component = fc.record({
  C: fc.double({ min: 1e-9, max: 1e-7, noNaN: true }),
  b: fc.double({ min: 0.1, max: 0.6, noNaN: true }),
});
const chain = fc.array(component, { minLength: 2, maxLength: 5 });
const lists = (parts: readonly { C: number; b: number }[]) =>
  [parts.map(({ C }) => C), parts.map(({ b }) => b)] as const;

it('every component passes the flow between the pressures on both sides of it', () => {
  fc.assert(
    fc.property(chain, fc.double({ min: 2e5, max: 7e5, noNaN: true }), (parts, downstream) => {
      const [c, b] = lists(parts);
      const flow = chainFlow(c, b, 8e5, downstream);
      const pressures = chainPressures(c, b, 8e5, flow);
      let before = 8e5;
      pressures.forEach((after, i) => {
        const passed = restrictionFlow(c[i]!, b[i]!, before, after, 293.15);
        // where the last one is at the edge of choking the slope of the pressure is steep
        expect(Math.abs(passed / flow - 1)).toBeLessThan(1e-6);
        before = after;
      });
    }),
  );
});

it('a chain passes no more than its smallest component, and less with one more', () => {
  fc.assert(
    fc.property(chain, (parts) => {
      const [c, b] = lists(parts);
      const all = chainFlow(c, b, 8e5, 0);
      expect(all).toBeLessThanOrEqual(Math.min(...c) * 8e5);
      expect(all).toBeLessThanOrEqual(chainFlow(c.slice(0, -1), b.slice(0, -1), 8e5, 0) * (1 + 1e-12));
    }),
  );
});

it('two in series follow the closed form of the 1989 edition within 0.1 %', () => {
  const closed = (c1: number, b1: number, c2: number): number => {
    const alpha = c1 / (b1 * c2);
    if (alpha <= 1) return c1;
    const k = (1 - b1) / b1;
    return (
      (c2 * alpha * (alpha * b1 + (1 - b1) * Math.sqrt(alpha * alpha + k * k - 1))) / (alpha * alpha + k * k)
    );
  };
  fc.assert(
    fc.property(component, component, (one, two) => {
      const march = chainFlow([one.C, two.C], [one.b, two.b], 8e5, 0) / 8e5;
      expect(march / closed(one.C, one.b, two.C)).toBeCloseTo(1, 3);
    }),
  );
});

it('nothing flows without a difference, and more pressure behind never lets more pass', () => {
  expect(chainFlow([1e-8, 2e-8], [0.3, 0.3], 5e5, 5e5)).toBe(0);
  let last = Number.POSITIVE_INFINITY;
  for (let p = 0; p <= 8e5; p += 2e4) {
    const flow = chainFlow([1e-8, 2e-8], [0.3, 0.4], 8e5, p);
    expect(flow).toBeLessThanOrEqual(last);
    last = flow;
  }
});
