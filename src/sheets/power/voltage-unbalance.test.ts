import fc from 'fast-check';
import { expect, it } from 'vitest';
import { runSheet } from '../frame.ts';
import { nemaUnbalance, sequenceUnbalance, voltageUnbalanceSheet } from './voltage-unbalance.ts';

const share = fc.double({ min: -0.04, max: 0.04, noNaN: true });

/** Negative over positive sequence from phasors laid out as a triangle: apart from the closed form. */
const fromPhasors = (a: number, b: number, c: number): number => {
  const cosine = (a * a + b * b - c * c) / (2 * a * b);
  const turn = Math.PI - Math.acos(cosine);
  const phasors = [
    [a, 0],
    [b * Math.cos(turn), b * Math.sin(turn)],
    [-a - b * Math.cos(turn), -b * Math.sin(turn)],
  ] as const;
  const sequence = (sign: number): number => {
    const [re, im] = phasors.reduce<readonly [number, number]>(
      ([x, y], [px, py], k) => {
        const angle = (sign * k * 2 * Math.PI) / 3;
        return [
          x + px * Math.cos(angle) - py * Math.sin(angle),
          y + px * Math.sin(angle) + py * Math.cos(angle),
        ];
      },
      [0, 0],
    );
    return Math.hypot(re, im);
  };
  const [less, more] = [sequence(1), sequence(-1)].sort((x, y) => x - y);
  return less! / more!;
};

it('the closed form is the ratio of the sequences of phasors', () => {
  fc.assert(
    fc.property(share, share, share, (a, b, c) => {
      const [x, y, z] = [400 * (1 + a), 400 * (1 + b), 400 * (1 + c)] as const;
      expect(Math.abs(sequenceUnbalance(x, y, z) - fromPhasors(x, y, z))).toBeLessThan(1e-6);
    }),
  );
});

it('the order and the size of the readings change nothing', () => {
  expect(nemaUnbalance(460, 467, 450)).toBeCloseTo(nemaUnbalance(450, 460, 467), 14);
  expect(sequenceUnbalance(460, 467, 450)).toBeCloseTo(sequenceUnbalance(920, 934, 900), 12);
});

it('three equal readings are balanced', () => {
  expect(nemaUnbalance(400, 400, 400)).toBe(0);
  expect(sequenceUnbalance(400, 400, 400)).toBe(0);
});

it('a reading that closes no triangle is refused at its field', () => {
  expect(runSheet(voltageUnbalanceSheet, { first: 120, second: 400, third: 230 })).toMatchObject({
    ok: false,
    problems: [{ code: 'UNBALANCE_NO_TRIANGLE', path: 'second' }],
  });
});
