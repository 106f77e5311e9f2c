import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Figure, Finding } from './assessment.ts';
import { barShape } from './bar-shape.ts';

const figure = (value?: number): Figure => ({
  id: 'x',
  kind: 'length',
  assumed: [],
  missing: [],
  ...(value === undefined ? {} : { value }),
});
const finding = (sense: 'least' | 'most', demand?: number, have?: number): Finding => ({
  id: 'x',
  verdict: 'unknown',
  sense,
  demand: figure(demand),
  have: figure(have),
  levers: [],
  notes: [],
  ifSaid: false,
  causes: [],
});

describe('the bar of a finding', () => {
  it('hatches from what is there to the demand where it is short', () => {
    const shape = barShape(finding('least', 10, 5));
    expect(shape.solid).toEqual([0, 0.31]);
    expect(shape.hatched).toEqual([0.31, 0.62]);
  });
  it('hatches what lies beyond the demand where it is too much', () => {
    const shape = barShape(finding('most', 10, 12));
    expect(shape.solid[1]).toBe(0.62);
    expect(shape.hatched?.[0]).toBe(0.62);
    expect(shape.hatched?.[1]).toBeCloseTo(0.744, 10);
  });
  it('hatches nothing where the demand is met', () => {
    expect(barShape(finding('least', 10, 10)).hatched).toBeUndefined();
    expect(barShape(finding('most', 10, 10)).hatched).toBeUndefined();
  });
  it('draws an outline up to the demand where nothing is known', () => {
    const shape = barShape(finding('least', 10));
    expect(shape.unknown).toEqual([0, 0.62]);
    expect(shape.solid).toEqual([0, 0]);
  });
  it('says that it is cut where the true bar is longer than its room', () => {
    expect(barShape(finding('least', 1, 100)).cut).toBe(true);
    expect(barShape(finding('least', 10, 11)).cut).toBe(false);
  });
  it('stays inside its room for any numbers', () => {
    const number = fc.option(fc.double({ noNaN: true, noDefaultInfinity: true }), { nil: undefined });
    fc.assert(
      fc.property(
        fc.constantFrom('least' as const, 'most' as const),
        number,
        number,
        (sense, demand, have) => {
          const { solid, hatched, unknown, tick } = barShape(finding(sense, demand, have));
          for (const at of [...solid, ...(hatched ?? []), ...(unknown ?? []), tick ?? 0]) {
            expect(at).toBeGreaterThanOrEqual(0);
            expect(at).toBeLessThanOrEqual(1);
          }
        },
      ),
    );
  });
});
