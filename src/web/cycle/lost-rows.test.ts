import { describe, expect, it } from 'vitest';
import type { LostTime } from '../../line/shift/index.ts';
import { lostRows, ownersOf, toldKeys } from './lost-rows.ts';

const of = (mean: number) => ({ mean, spread: 0 });
const minutes: readonly LostTime[] = [
  { state: 'held', station: '+FILL', step: 'lower', owner: 'machine', seconds: of(600) },
  { state: 'running', station: '+WASH', step: 'stroke', owner: 'machine', seconds: of(3000) },
  { state: 'running', station: '+WASH', step: 'dwell', owner: 'machine', seconds: of(17_000) },
  { state: 'held', station: '+FILL', step: 'fill', owner: 'machine', seconds: of(7000) },
  { state: 'starved', station: '+LOAD', step: 'load', owner: 'people', seconds: of(300) },
  { state: 'stopped', station: '+CAP', cause: 'JAM', owner: 'material', seconds: of(900) },
];

describe('the rows of a shift', () => {
  it('add up to what the minutes add up to, whatever is taken together', () => {
    const sum = (seconds: readonly number[]): number => seconds.reduce((a, b) => a + b, 0);
    expect(sum(lostRows({ minutes }).map(({ seconds }) => seconds))).toBe(
      sum(minutes.map(({ seconds }) => seconds.mean)),
    );
  });
  it('hold one for the running and one for each machine or cause that was waited for', () => {
    expect(lostRows({ minutes }).map(({ key, seconds, steps }) => [key, seconds, steps])).toEqual([
      ['running', 20_000, ['dwell', 'stroke']],
      ['held +FILL', 7600, ['fill', 'lower']],
      ['stopped JAM', 900, []],
      ['starved +LOAD', 300, ['load']],
    ]);
  });
  it('have a line of their own where they are more than a rounding of the shift on some floor', () => {
    const one = { rows: lostRows({ minutes }), duration: 28_800 };
    expect(toldKeys([one])).toHaveLength(4);
    // a day in which these minutes are nothing
    expect(toldKeys([{ ...one, duration: 1e7 }])).toEqual(['running']);
    expect(toldKeys([{ ...one, duration: 1e7 }, one])).toHaveLength(4);
  });
  it('count to an owner what stopped and who did not keep up, not the pace of a machine', () => {
    expect(ownersOf({ minutes })).toEqual({ machine: 0, supply: 0, people: 300, material: 900 });
  });
});
