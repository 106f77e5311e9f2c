import fc from 'fast-check';
import { expect, it } from 'vitest';
import { pipeLoss } from './pipe-loss.ts';

const pipe = fc.record({
  bore: fc.double({ min: 0.005, max: 0.2, noNaN: true }),
  length: fc.double({ min: 0.1, max: 500, noNaN: true }),
  relative: fc.double({ min: 0, max: 0.5, noNaN: true }),
  fittings: fc.double({ min: 0, max: 50, noNaN: true }),
});
type Pipe = { bore: number; length: number; relative: number; fittings: number };
const water = [998.2, 1.0016e-3] as const;
const loss = (q: number, { bore, length, relative, fittings }: Pipe): number =>
  pipeLoss(q, bore, length, relative * bore, fittings, ...water);
const flowAt = (re: number, bore: number): number => (re * Math.PI * bore * water[1]) / (4 * water[0]);

it('more flow always loses more, through the transition too', () => {
  fc.assert(
    fc.property(
      pipe,
      fc.double({ min: 0, max: 7, noNaN: true }),
      fc.double({ min: 1e-6, max: 0.2, noNaN: true }),
      (p, exponent, more) => {
        const q = flowAt(10 ** exponent, p.bore);
        return loss(q * (1 + more), p) > loss(q, p);
      },
    ),
    { numRuns: 2000 },
  );
  for (let re = 1900; re < 4200; re += 5) {
    const p = { bore: 0.02, length: 10, relative: 0, fittings: 0 };
    expect(loss(flowAt(re + 5, p.bore), p)).toBeGreaterThan(loss(flowAt(re, p.bore), p));
  }
});

it('the loss turns with the flow and is nothing at rest', () => {
  fc.assert(
    fc.property(pipe, fc.double({ min: 0, max: 1, noNaN: true }), (p, q) => loss(-q, p) === -loss(q, p)),
  );
  expect(loss(0, { bore: 0.02, length: 10, relative: 0.01, fittings: 3 })).toBe(0);
});

it('two lengths lose what they lose one after the other', () => {
  fc.assert(
    fc.property(pipe, fc.double({ min: 1e-6, max: 0.05, noNaN: true }), (p, q) => {
      const twice = loss(q, { ...p, length: 2 * p.length, fittings: 2 * p.fittings });
      return Math.abs(twice / (2 * loss(q, p)) - 1) < 1e-12;
    }),
  );
});

it('laminar loss goes with the flow and the inverse fourth power of the bore', () => {
  const p = { bore: 0.01, length: 1, relative: 0, fittings: 0 };
  expect(loss(2e-6, p) / loss(1e-6, p)).toBeCloseTo(2, 12);
  expect(loss(1e-6, p) / loss(1e-6, { ...p, bore: 0.02 })).toBeCloseTo(16, 12);
});
