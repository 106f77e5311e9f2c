import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Book, readBook } from '../../book/index.ts';
import { assessBook } from '../../floor/index.ts';
import type { SettingMoment } from '../../record/setting-moments.ts';
import { recorded, type Said } from '../testing/demo-proof.ts';
import { compareSettings } from './compare-settings.ts';
import { settingRegister } from './register.ts';

const many = 300;

/** A line of invented settings on two floors. */
const book: Book = (() => {
  const read = readBook({
    twinfloor: 1,
    line: {
      settings: Array.from({ length: many }, (_, i) => ({
        tag: `SET-${i}`,
        ...(i % 3 === 0 ? {} : { unit: i % 3 === 1 ? 'mm' : 'clicks' }),
      })),
    },
    floors: [
      { tag: 'OXBOW', role: 'built on' },
      { tag: 'LARKMOOR', role: 'bound for' },
    ],
  });
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return read.value;
})();

const assessment = assessBook(book);

const setAt = (i: number, moment: SettingMoment, value: string): Said => ({
  kind: 'setting',
  version: 1,
  body: {
    setting: `SET-${i}`,
    floor: moment === 'as left' ? 'LARKMOOR' : 'OXBOW',
    moment,
    value,
    by: 'the engineer',
  },
});

/** The same number of the unit that the row has, in two ways of writing. */
const plainly = (i: number, n: number): string => (i % 3 === 0 ? `mark ${n}` : String(n));
const otherwise = (i: number, n: number): string =>
  i % 3 === 1 ? `${n / 10} cm` : i % 3 === 2 ? `${n} clicks` : ` mark ${n} `;

const registerOf = (said: readonly Said[]) => settingRegister(book, assessment, recorded(said));

const all = Array.from({ length: many }, (_, i) => i);

/** Values of every row at the run-off, and as left with some rows changed. */
const twoMoments = (changed: ReadonlySet<number>, base: readonly number[]) =>
  registerOf([
    ...all.map((i) => setAt(i, 'run-off', plainly(i, base[i]!))),
    ...all.map((i) => setAt(i, 'as left', otherwise(i, base[i]! + (changed.has(i) ? 1 : 0)))),
  ]);

describe('two moments of the register', () => {
  it('of 300 rows with 40 changed show exactly those 40, whatever unit the rest was typed in', () => {
    fc.assert(
      fc.property(
        fc.uniqueArray(fc.constantFrom(...all), { minLength: 40, maxLength: 40 }),
        fc.array(fc.integer({ min: 1, max: 900 }), { minLength: many, maxLength: many }),
        (rows, base) => {
          const { changed, same, untold } = compareSettings(
            twoMoments(new Set(rows), base),
            'run-off',
            'as left',
          );
          expect(changed.map(({ row }) => row.id)).toEqual(
            all.filter((i) => rows.includes(i)).map((i) => `SET-${i}`),
          );
          expect(same.length).toBe(many - 40);
          // the version and the backup of the program were recorded at neither
          expect(untold.map(({ row }) => row.id)).toEqual(['program', 'backup']);
        },
      ),
      { numRuns: 4 },
    );
  });

  it('compare alike both ways, and nothing of a moment with itself', () => {
    fc.assert(
      fc.property(
        fc.uniqueArray(fc.constantFrom(...all)),
        fc.array(fc.integer({ min: 1, max: 900 }), { minLength: many, maxLength: many }),
        (rows, base) => {
          const register = twoMoments(new Set(rows), base);
          const there = compareSettings(register, 'run-off', 'as left');
          const back = compareSettings(register, 'as left', 'run-off');
          expect(back.changed).toEqual(
            there.changed.map(({ row, from, to }) => ({ row, from: to, to: from })),
          );
          expect(compareSettings(register, 'as left', 'as left').changed).toEqual([]);
        },
      ),
      { numRuns: 3 },
    );
  });

  it('tell of a row that one of them lacks that nobody can say whether it changed', () => {
    const { changed, same, untold } = compareSettings(
      registerOf([setAt(1, 'run-off', '5')]),
      'run-off',
      'as left',
    );
    expect([changed, same]).toEqual([[], []]);
    expect(untold.length).toBe(many + 2);
    expect(untold.find(({ row }) => row.id === 'SET-1')?.missing).toEqual(['as left']);
    expect(untold.find(({ row }) => row.id === 'SET-2')?.missing).toEqual(['run-off', 'as left']);
  });
});
