import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { runSheet } from '../frame.ts';
import { liftingEntries } from './entries.ts';
import { unequalTension } from './off-centre-sling.ts';
import { slingLegSheet, slingTension } from './sling-leg.ts';
import { legLength, planTension } from './sling-plan.ts';
import { centreOfMass } from './two-point-weighing.ts';

const angle = fc.double({ min: 0.05, max: 1.2, noNaN: true });
const mass = fc.double({ min: 1, max: 1e5, noNaN: true });

describe('laws of lifting', () => {
  it('two legs hold the weight up and pull against each other evenly', () => {
    fc.assert(
      fc.property(mass, angle, angle, (m, t1, t2) => {
        fc.pre(t1 + t2 < 3);
        const first = unequalTension(m, t1, t2);
        const second = unequalTension(m, t2, t1);
        expect((first * Math.cos(t1) + second * Math.cos(t2)) / (m * 9.80665)).toBeCloseTo(1, 9);
        expect((first * Math.sin(t1)) / (second * Math.sin(t2))).toBeCloseTo(1, 9);
      }),
    );
  });

  it('equal legs are the case of the off-centre sling with equal angles', () => {
    fc.assert(
      fc.property(mass, angle, (m, t) => {
        expect(slingTension(m, 2, 0.5 * Math.PI - t) / unequalTension(m, t, t)).toBeCloseTo(1, 9);
      }),
    );
  });

  it('legs by their measures pull as legs by their angles', () => {
    const metres = fc.double({ min: 0.1, max: 5, noNaN: true });
    fc.assert(
      fc.property(mass, metres, metres, metres, (m, own, other, height) => {
        const byAngles = unequalTension(m, Math.atan(own / height), Math.atan(other / height));
        expect(planTension(m, own, other, 0, height) / byAngles).toBeCloseTo(1, 9);
      }),
    );
  });

  it('no two legs across the corners of a rigid load pull harder than the legs that are counted', () => {
    const metres = fc.double({ min: 0.1, max: 3, noNaN: true });
    fc.assert(
      fc.property(mass, metres, metres, metres, metres, (m, own, other, across, height) => {
        // the centre lies on the line between two corners, so that the other two legs hang slack
        const opposite = (across * other) / own;
        const [length, far] = [legLength(own, across, height), legLength(other, opposite, height)];
        const up = m * 9.80665;
        const pull = (up * other * length) / ((own + other) * height);
        const facing = (up * own * far) / ((own + other) * height);
        // they hold the weight up and pull against each other evenly, both ways
        expect((pull * height) / length + (facing * height) / far).toBeCloseTo(up, 3);
        expect((pull * own) / length / ((facing * other) / far)).toBeCloseTo(1, 9);
        const wide = Math.max(across, opposite);
        expect(planTension(m, own, other, wide, height)).toBeGreaterThanOrEqual(pull * (1 - 1e-12));
        expect(planTension(m, other, own, wide, height)).toBeGreaterThanOrEqual(facing * (1 - 1e-12));
      }),
    );
  });

  it('the centre lies nearer to the support that weighs more, and moments balance about it', () => {
    fc.assert(
      fc.property(mass, mass, (m1, m2) => {
        const x = centreOfMass(m1, m2, 2);
        expect(Math.abs(m1 * x - m2 * (2 - x))).toBeLessThan(1e-9 * (m1 + m2));
      }),
    );
  });

  it('30 degrees from the vertical is 60 to the horizontal, and the two give the same pull', () => {
    const run = (degrees: number, angleFrom: string) => {
      const got = runSheet(slingLegSheet, {
        mass: 500,
        legs: '2',
        angle: (degrees * Math.PI) / 180,
        angleFrom,
        legCapacity: 500,
      });
      return got.ok ? got.value.outputs.tension : got.problems.map(({ code }) => code);
    };
    expect(run(30, 'vertical')).toBeCloseTo(run(60, 'horizontal') as number, 9);
    expect(run(10, 'horizontal')).toEqual(['SLING_TOO_FLAT']);
    expect(run(80, 'vertical')).toEqual(['SLING_TOO_FLAT']);
  });
});

it('every sheet carries the caution, and no word calls anything safe', () => {
  for (const { sheet } of liftingEntries) {
    expect(sheet.limits.map(({ code }) => code)).toContain('CAUTION_LIFTING');
  }
  expect(JSON.stringify(liftingEntries.map(({ text }) => text))).not.toMatch(/\bsafe(ly|ty)?\b/i);
});
