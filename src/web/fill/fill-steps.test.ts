import { describe, expect, it } from 'vitest';
import type { Slip } from '../../fill/slips.ts';
import type { RecordedTrial } from '../../record/trials.ts';
import { stepNamed } from './fill-steps.ts';
import { digitsFor } from './interval.tsx';
import { mendedBody } from './mended-body.ts';
import { rowNumber } from './row-number.ts';
import { isOnPath, pathOf, traceConditions } from './trace-guide.ts';
import type { TrialBody } from './weigh-body.ts';

describe('an address of the page', () => {
  it('names a question; one that nobody knows is the first', () => {
    expect(stepNamed('presets')).toBe('presets');
    expect(stepNamed('nonsense')).toBe('samples');
    expect(stepNamed(undefined)).toBe('samples');
  });
});

const body: TrialBody = {
  floor: 'OXBOW',
  lane: '-Y11',
  preset: 803,
  by: 'the engineer',
  gross: '0.962 kg',
  tare: '2.981 kg',
};
const slip = (part: Pick<Slip, 'code' | 'field'> & Partial<Slip>): Slip => ({
  compared: { of: 'net', expected: 2, within: 0.01, bottles: 3 },
  ...part,
});

describe('the likely value of a slip', () => {
  it('takes the place of what was typed, in the unit of the balance', () => {
    expect(mendedBody(body, slip({ code: 'tareForgotten', field: 'tare', likely: 0.9615 }), 'g').tare).toBe(
      '961.5 g',
    );
    expect(mendedBody(body, slip({ code: 'laneSwapped', field: 'lane', likely: '-Y12' }), 'kg').lane).toBe(
      '-Y12',
    );
    expect(mendedBody(body, slip({ code: 'digitsTurned', field: 'preset', likely: 830 }), 'kg').preset).toBe(
      830,
    );
    expect(mendedBody(body, slip({ code: 'timeUnit', field: 'time', likely: 11.2 }), 'kg').time).toBe(
      '11.2 s',
    );
  });
  it('of two masses in each other’s place is both, as they were typed', () => {
    const mended = mendedBody(body, slip({ code: 'grossTareSwapped', field: 'gross', likely: 2.981 }), 'kg');
    expect([mended.gross, mended.tare]).toEqual(['2.981 kg', '0.962 kg']);
  });
  it('is nothing where nobody can tell', () => {
    expect(mendedBody(body, slip({ code: 'unlikeOthers', field: 'gross' }), 'kg')).toBe(body);
  });
});

describe('the way by hand', () => {
  const step = (preset: number, overflow: RecordedTrial['overflow'], lane = '-Y11'): RecordedTrial => ({
    id: `${preset}`,
    floor: 'OXBOW',
    lane,
    preset,
    conditions: traceConditions,
    ...(overflow === undefined ? {} : { overflow }),
  });
  const guide = { expected: 800, deviation: 2, coarse: 8 };
  it('is what the records of the lane say, and ends at two traces that the trials agree with', () => {
    const records = [step(800, 'none'), step(600, 'stream', '-Y12'), step(801, 'trace'), step(801, 'trace')];
    const path = pathOf(records, '-Y11', guide);
    expect(path.steps.map(({ preset }) => preset)).toEqual([800, 801, 801]);
    expect(path.state).toBe('agreed');
    expect(isOnPath({})).toBe(false);
  });
  it('goes up where nothing ran over', () => {
    expect(pathOf([step(800, 'none')], '-Y11', guide).next).toBeGreaterThan(800);
  });
});

describe('what a person reads', () => {
  it('of the name of a row is its number; another name stands as it is', () => {
    expect(rowNumber('12-a1b2c3')).toBe('12');
    expect(rowNumber('780.2')).toBe('780.2');
    expect(rowNumber(undefined)).toBe('');
  });
  it('of a value are the digits that its interval lets mean something', () => {
    expect(digitsFor({ value: 2.0194e-3, lower: 2.0176e-3, upper: 2.0212e-3 })).toBe(5);
    expect(digitsFor({ value: 7.58, lower: 6.95, upper: 8.28 })).toBe(3);
    expect(digitsFor({ value: 5, lower: 5, upper: 5 })).toBe(4);
  });
});
