import { expect, it } from 'vitest';
import { runSheet } from '../frame.ts';
import { singlePhaseRows, threePhaseRows } from './full-load-currents.ts';
import { horsepower } from './horsepower.ts';
import { motorCurrentUs, motorCurrentUsSheet } from './motor-current-us.ts';

const three = (hp: number, voltage: number) => motorCurrentUs(hp * horsepower, voltage, 'three-phase');

it('a larger motor takes more current, a higher voltage takes less, in every row and column', () => {
  for (const rows of [threePhaseRows, singlePhaseRows]) {
    for (const [i, row] of rows.entries()) {
      const held = row.amperes.filter((amperes) => amperes !== undefined);
      expect(held).toEqual([...held].sort((a, b) => b - a));
      row.amperes.forEach((amperes, column) => {
        const smaller = rows[i - 1]?.amperes[column];
        if (amperes !== undefined && smaller !== undefined) expect(amperes).toBeGreaterThan(smaller);
      });
    }
  }
});

it('the 208 V column is 1.10 and the 200 V column 1.15 times the 230 V column: the rule of the table, within 3 %', () => {
  for (const { amperes } of threePhaseRows) {
    const [, at200, at208, at230, at460] = amperes as number[];
    expect(at208! / at230! / 1.1).toBeCloseTo(1, 1.3);
    expect(at200! / at230! / 1.15).toBeCloseTo(1, 1.3);
    expect(at230! / at460!).toBeGreaterThan(1.99);
    expect(at230! / at460!).toBeLessThan(2.01);
  }
});

it('a rating between two rows is refused, and the rows are named', () => {
  const run = runSheet(motorCurrentUsSheet, { power: 7500, voltage: 460, phases: 'three-phase' });
  expect(run).toMatchObject({ ok: false, problems: [{ code: 'SHEET_OFF_TABLE', path: 'power' }] });
  expect(!run.ok && run.problems[0]?.allowed).toContain('7.5 hp');
  expect(three(12, 460)).toBeUndefined();
});

it('a motor that its column does not hold is refused', () => {
  const at115 = { power: 5 * horsepower, voltage: 115, phases: 'three-phase' };
  expect(runSheet(motorCurrentUsSheet, at115)).toMatchObject({
    ok: false,
    problems: [{ path: 'power', allowed: ['0.5 hp', '0.75 hp', '1 hp', '1.5 hp', '2 hp'] }],
  });
});

it('400 V is no voltage of the US table', () => {
  const at400 = { power: 5 * horsepower, voltage: 400, phases: 'three-phase' };
  expect(runSheet(motorCurrentUsSheet, at400)).toMatchObject({ ok: false, problems: [{ path: 'voltage' }] });
});

it('a horsepower of 745.7 or 746 W is the same plate', () => {
  expect(motorCurrentUs(5 * 745.7, 208, 'three-phase')).toBe(motorCurrentUs(5 * 746, 208, 'three-phase'));
});
