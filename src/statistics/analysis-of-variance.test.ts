import { expect, it } from 'vitest';
import { analysisOfVariance } from './analysis-of-variance.ts';
import { digits } from './testing/digits.ts';
import { siRstv } from './testing/strd-variance.ts';

it('NIST StRD analysis of variance, SiRstv: every certified figure to 10 digits', () => {
  const table = analysisOfVariance(siRstv.groups);
  expect([table.betweenDof, table.withinDof]).toEqual([siRstv.betweenDof, siRstv.withinDof]);
  for (const name of ['betweenSquares', 'withinSquares', 'betweenMean', 'withinMean', 'f'] as const) {
    expect(digits(table[name]!, siRstv[name]), name).toBeGreaterThan(10);
  }
  expect(digits(Math.sqrt(table.withinMean), siRstv.residualDeviation)).toBeGreaterThan(10);
});

it('groups without any scatter have no F', () => {
  const table = analysisOfVariance([
    [1, 1],
    [2, 2],
  ]);
  expect(table.f).toBeUndefined();
  expect(table.chance).toBeUndefined();
});
