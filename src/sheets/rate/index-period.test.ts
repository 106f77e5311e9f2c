import { expect, it } from 'vitest';
import { runSheet } from '../frame.ts';
import { indexPeriod, indexPeriodSheet } from './index-period.ts';

const given = { stroke: 4, dwell: 8, stretch: 1.2, dwellBy: 'drive' };

it('what the cylinders add is not stretched with the frequency', () => {
  const plain = indexPeriod(4, 8, 1.2, 'drive');
  expect(indexPeriod(4, 8, 1.2, 'drive', 0)).toEqual(plain);
  expect(indexPeriod(4, 8, 1.2, 'drive', 0.5).index - plain.index).toBeCloseTo(0.5, 12);
  expect(indexPeriod(4, 8, 1.2, 'drive', 0.5).dwellHere).toBe(plain.dwellHere);
});

it('cylinders cannot be faster by more than the whole stroke', () => {
  const codes = (inputs: Readonly<Record<string, unknown>>): [string, string][] => {
    const run = runSheet(indexPeriodSheet, inputs);
    return run.ok ? [] : run.problems.map(({ code, path }) => [code, path]);
  };
  expect(codes({ ...given, added: -4.7 })).toEqual([]);
  expect(codes({ ...given, added: -4.9 })).toEqual([['INDEX_NOT_POSITIVE', 'added']]);
  expect(codes({ ...given, dwell: 0, added: -4.8 })).toEqual([['INDEX_NOT_POSITIVE', 'added']]);
});
