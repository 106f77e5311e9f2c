import { describe, expect, it } from 'vitest';
import type { LostTime } from '../../line/shift/index.ts';
import { keyedRows, toldKeys } from './lost-rows.ts';

const of = (mean: number) => ({ mean, spread: 0 });
const minutes: readonly LostTime[] = [
  { state: 'running', station: '+WASH', step: 'dwell', owner: 'machine', seconds: of(20_000) },
  { state: 'held', station: '+FILL', step: 'fill', owner: 'machine', seconds: of(7600) },
  { state: 'starved', station: '+LOAD', step: 'load', owner: 'people', seconds: of(300) },
  { state: 'stopped', station: '+CAP', cause: 'JAM', owner: 'material', seconds: of(900) },
];

describe('the rows of a shift', () => {
  it('have one name each', () => {
    const keys = keyedRows(minutes, 28_800).map(({ key }) => key);
    expect(keys).toEqual(['running', 'wait +FILL', 'cause JAM', 'wait +LOAD']);
  });
  it('have a line of their own where they are more than a rounding of the shift on some floor', () => {
    const one = { rows: keyedRows(minutes, 28_800) };
    // a day in which all but the running is nothing
    const long = { rows: keyedRows(minutes, 1e7) };
    expect(toldKeys([one])).toHaveLength(4);
    expect(toldKeys([long])).toEqual(['running']);
    expect(toldKeys([long, one])).toHaveLength(4);
  });
});
