import { describe, expect, it } from 'vitest';
import type { Book } from '../../book/index.ts';
import { assessBook } from '../../floor/index.ts';
import { checkOf, demo, floorOf, proofOf, recorded, type Said, triedOn } from '../testing/demo-proof.ts';
import { compareSettings } from './compare-settings.ts';
import { movedFindings } from './moved-findings.ts';
import { settingRegister } from './register.ts';
import { touchedChecks } from './touched-checks.ts';

const setAt = (setting: string, moment: string, value: string): Said => ({
  kind: 'setting',
  version: 1,
  body: {
    setting,
    floor: moment === 'as left' ? 'LARKMOOR' : 'OXBOW',
    moment,
    value,
    by: 'the engineer',
  },
});

const twice = (setting: string, from: string, to: string): readonly Said[] => [
  setAt(setting, 'run-off', from),
  setAt(setting, 'as left', to),
];

const changesOf = (said: readonly Said[], book: Book = demo) =>
  compareSettings(settingRegister(book, assessBook(book), recorded(said)), 'run-off', 'as left').changed;

const touched = (said: readonly Said[]) => {
  const [change] = changesOf(said);
  return touchedChecks(change!, demo, floorOf(proofOf(demo, recorded(said)), 'LARKMOOR').checks);
};

describe('a changed setting', () => {
  it('names the checks that hang on its place in the book', () => {
    const ids = (setting: string, from: string, to: string) =>
      touched(twice(setting, from, to)).map(({ check }) => check);
    expect(ids('overload -M2', '4.5 A', '5 A')).toContain('current -M2');
    expect(ids('overload -M2', '4.5 A', '5 A')).not.toContain('current -M3');
    expect(ids('heater -E1', '62 degC', '65 degC')).toContain('washTemperature +WASH.Z2');
    expect(ids('preset -Y11 FLAGON-2L', '803', '805')).toContain('fillLevel -Y11');
  });

  it('that stands nowhere in the book names those on its thing and those of its sort', () => {
    const ids = (setting: string, from: string, to: string) =>
      touched(twice(setting, from, to)).map(({ check }) => check);
    expect(ids('sensor -B22', '40 mm', '45 mm')).toEqual(['states -B22', 'capChute +CAP']);
    expect(ids('throttleOut -C1', '2', '2.5')).toContain('cycleTime FLAGON-2L');
    expect(ids('program', 'v3', 'v4')).toEqual(
      expect.arrayContaining(['program', 'effect -S1 -M1', 'holdRule HR1']),
    );
    expect(ids('program', 'v3', 'v4')).not.toContain('bond J-2');
  });

  it('makes those stale that were tried before it, not those that were tried since or never', () => {
    const before = triedOn(
      demo,
      'LARKMOOR',
      checkOf(floorOf(proofOf(demo), 'LARKMOOR'), 'states -B22').check,
      {
        seen: true,
      },
    );
    const stale = (said: readonly Said[]) =>
      touched(said).flatMap(({ check, stale: is }) => (is ? [check] : []));
    const [was, is] = twice('sensor -B22', '40 mm', '45 mm') as [Said, Said];
    expect(stale([was, before, is])).toEqual(['states -B22']);
    expect(stale([was, is, before])).toEqual([]);
    expect(stale([was, is])).toEqual([]);
  });

  it('moves the findings that the same change of the book moves', () => {
    const changes = changesOf(twice('overload -M2', '4.5 A', '6 A'));
    const moved = movedFindings(demo, 'LARKMOOR', changes);
    // NEC 2020, 430.32(A)(1): 115 % of 4.5 A are 5.175 A; memory
    expect(moved.map(({ finding }) => finding)).toEqual(['overloadRange -M2']);
    expect(moved[0]).toMatchObject({ from: { verdict: 'carries' }, to: { verdict: 'short' } });
    // the relay reaches far enough; it is set too high, and a margin of its reach would belie that
    expect(moved[0]?.to).not.toHaveProperty('margin');
  });

  it('of a lane moves the findings of the fill, and of its own floor alone', () => {
    const changes = changesOf(twice('preset -Y11 FLAGON-2L', '803', '700'));
    expect(movedFindings(demo, 'LARKMOOR', changes).find(({ finding }) => finding === 'level')).toMatchObject(
      {
        to: { verdict: 'short' },
      },
    );
    // 100 counts of 402 in a litre are a quarter of a litre short
    const level = movedFindings(demo, 'OXBOW', changes).find(({ finding }) => finding === 'level');
    expect(level?.to?.verdict).toBe('short');
  });

  it('that has no place in the book moves nothing that is worked out', () => {
    expect(movedFindings(demo, 'LARKMOOR', changesOf(twice('sensor -B22', '40 mm', '45 mm')))).toEqual([]);
  });
});
