import fc from 'fast-check';
import { expect, it } from 'vitest';
import { runSheet } from '../frame.ts';
import { dryerCapacitySheet, dryerFactor } from './dryer-capacity.ts';
import { dryerFactors, factorAt } from './dryer-factors.ts';

const state = { pressure: 7e5, ambient: 308.15, inlet: 308.15, dewPoint: 276.15 };

it('every printed column gives its printed factor', () => {
  for (const table of Object.values(dryerFactors)) {
    for (const row of Object.values(table)) {
      row.at.forEach((column: number, i: number) => {
        expect(factorAt(row, column)).toBeCloseTo(row.factor[i], 12);
      });
    }
  }
});

it('hotter air or a hotter room never helps, more pressure or a milder dew point never harms', () => {
  fc.assert(
    fc.property(
      fc.constantFrom('A' as const, 'B' as const),
      fc.double({ min: 0, max: 1, noNaN: true }),
      fc.double({ min: 0, max: 1, noNaN: true }),
      (table, a, b) => {
        const [low, high] = [Math.min(a, b), Math.max(a, b)];
        const at = (change: object) => dryerFactor(table, { ...state, ...change });
        expect(at({ inlet: 305.2 + 20 * high })).toBeLessThanOrEqual(at({ inlet: 305.2 + 20 * low }));
        expect(at({ ambient: 300.2 + 15 * high })).toBeLessThanOrEqual(at({ ambient: 300.2 + 15 * low }));
        expect(at({ pressure: 4e5 + 1e6 * high })).toBeGreaterThanOrEqual(at({ pressure: 4e5 + 1e6 * low }));
        expect(at({ dewPoint: 276.15 + 7 * high })).toBeGreaterThanOrEqual(
          at({ dewPoint: 276.15 + 7 * low }),
        );
      },
    ),
  );
});

it('off its columns a table is refused at the field, never carried on', () => {
  const run = runSheet(dryerCapacitySheet, {
    ...state,
    table: 'A',
    ratedFlow: 0.1,
    flow: 0.1,
    ambient: 295.15,
    inlet: 353.15,
  });
  const thin = runSheet(dryerCapacitySheet, {
    ...state,
    table: 'B',
    ratedFlow: 0.1,
    flow: 0.1,
    pressure: 3e5,
  });
  expect(thin.ok ? [] : thin.problems.map(({ code, path }) => [code, path])).toEqual([
    ['SHEET_BEYOND_TABLE', 'pressure'],
  ]);
  expect(run.ok ? [] : run.problems.map(({ code, path }) => [code, path])).toEqual([
    ['SHEET_BEYOND_TABLE', 'ambient'],
    ['SHEET_BEYOND_TABLE', 'inlet'],
  ]);
});

it('the rated flow that it asks for is the smallest that carries the demand', () => {
  const run = (ratedFlow: number) =>
    runSheet(dryerCapacitySheet, { ...state, table: 'B', ratedFlow, flow: 0.05 });
  const first = run(0.05);
  if (!first.ok) throw new Error('refused');
  const codes = (ratedFlow: number) => {
    const again = run(ratedFlow);
    return again.ok ? again.value.notes.map(({ code }) => code) : [];
  };
  expect(codes(first.value.outputs.ratedNeeded)).not.toContain('DRYER_TOO_SMALL');
  expect(codes(0.999 * first.value.outputs.ratedNeeded)).toContain('DRYER_TOO_SMALL');
});
