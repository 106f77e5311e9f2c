import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { runSheet, type Sheet } from '../frame.ts';
import { longestRound } from './corner-turn.ts';
import { buildingEntries } from './entries.ts';
import { footForce, oneFootFree } from './foot-load.ts';
import { rampForce } from './ramp-push.ts';

const corridor = fc.double({ min: 0.5, max: 10, noNaN: true });
const share = fc.double({ min: 0.01, max: 0.99, noNaN: true });

/** Does a rectangle in touch with both outer walls clear the inner corner at each of many angles? */
const clears = (length: number, width: number, a: number, b: number): boolean => {
  for (let i = 1; i < 4000; i++) {
    const t = (i / 4000) * 0.5 * Math.PI;
    // inner long side: the outer one from (L cos t, 0) to (0, L sin t), moved inwards by the width
    const beyond = a * Math.sin(t) + b * Math.cos(t) - length * Math.sin(t) * Math.cos(t) - width;
    if (beyond < 0) return false;
  }
  return true;
};

describe('round a corner', () => {
  it('a pole without width passes up to (a^(2/3) + b^(2/3))^(3/2)', () => {
    fc.assert(
      fc.property(corridor, corridor, (a, b) => {
        expect(longestRound(0, a, b) / (a ** (2 / 3) + b ** (2 / 3)) ** 1.5).toBeCloseTo(1, 9);
      }),
    );
  });

  it('the longest told clears the corner at every angle, or goes sideways, and a hundredth more does neither', () => {
    fc.assert(
      fc.property(corridor, corridor, share, (a, b, part) => {
        const width = part * Math.min(a, b);
        const longest = longestRound(width, a, b);
        expect(clears(longest * (1 - 1e-6), width, a, b) || longest <= Math.max(a, b)).toBe(true);
        expect(clears(longest * 1.01, width, a, b)).toBe(false);
      }),
    );
  });

  it('it is the same both ways, grows with the corridors and falls with the width', () => {
    fc.assert(
      fc.property(corridor, corridor, share, (a, b, part) => {
        const width = part * Math.min(a, b);
        const longest = longestRound(width, a, b);
        expect(longestRound(width, b, a) / longest).toBeCloseTo(1, 9);
        expect(longestRound(width, a + 0.1, b)).toBeGreaterThanOrEqual(longest - 1e-9);
        expect(longestRound(width * 0.9, a, b)).toBeGreaterThanOrEqual(longest - 1e-9);
      }),
    );
  });

  it('twice everything is twice as long; wider than a corridor nothing passes', () => {
    fc.assert(
      fc.property(corridor, corridor, share, (a, b, part) => {
        const width = part * Math.min(a, b);
        expect(longestRound(2 * width, 2 * a, 2 * b) / longestRound(width, a, b)).toBeCloseTo(2, 9);
        expect(longestRound(Math.min(a, b) * 1.001, a, b)).toBe(0);
      }),
    );
  });
});

describe('feet and ramps', () => {
  it('with one of four hanging free each carries a third more, and three carry the whole', () => {
    expect(oneFootFree(4)).toBeCloseTo(4 / 3, 15);
    expect(3 * footForce(900, 4, oneFootFree(4))).toBeCloseTo(footForce(900, 1, 1), 9);
    expect(oneFootFree(3)).toBe(1);
  });

  it('up and down differ by twice the rolling force along the ramp', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.double({ min: 0, max: 0.2, noNaN: true }),
        (s, f) => {
          const level = rampForce(100, 0, f, 1) / Math.sqrt(1 + s * s);
          expect(rampForce(100, s, f, 1) - rampForce(100, s, f, -1)).toBeCloseTo(2 * level, 9);
        },
      ),
    );
  });
});

const sheets = new Map<string, Sheet>(buildingEntries.map(({ sheet }) => [sheet.id, sheet]));
const cases = new Map(buildingEntries.map(({ sheet, cases: all }) => [sheet.id, all]));

describe('what cannot be is refused at its field', () => {
  it.each([
    ['three and a half feet', 'building/foot-load', { feet: 3.5 }, 'FEET_WHOLE', 'feet'],
    ['a machine without feet', 'building/foot-load', { feet: 0 }, 'SHEET_RANGE', 'feet'],
    [
      'more wheels carrying than there are',
      'building/gear-load',
      { carryingWheels: 17 },
      'WHEELS_CARRYING',
      'carryingWheels',
    ],
    ['a corridor of no width', 'building/corner-turn', { first: 0 }, 'SHEET_RANGE', 'first'],
    ['a ramp steeper than a wall', 'building/ramp-push', { slope: 3 }, 'SHEET_RANGE', 'slope'],
  ] as const)('%s', (_, id, wrong, code, path) => {
    const run = runSheet(sheets.get(id)!, { ...cases.get(id)![0]!.inputs, ...wrong });
    expect(run.ok ? [] : run.problems.map((one) => [one.code, one.path])).toEqual([[code, path]]);
  });
});

it('every sheet carries a caution, and no word calls anything safe', () => {
  for (const { sheet } of buildingEntries) {
    expect(sheet.limits.some(({ code }) => code.startsWith('CAUTION_'))).toBe(true);
  }
  expect(JSON.stringify(buildingEntries.map(({ text }) => text))).not.toMatch(/\bsafe(ly|ty)?\b/i);
});
