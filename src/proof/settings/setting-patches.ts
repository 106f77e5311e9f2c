import { type Book, type Patch, stepsOf, valueAt } from '../../book/index.ts';
import type { SettingAt } from './register.ts';
import type { SettingRow } from './setting-row.ts';

/** The counts of a lane are kept floor by floor: what is left at one leaves the other as it was. */
const countPatches = (row: SettingRow, book: Book, floor: string, count: number): readonly Patch[] => {
  const index = (book.floors ?? []).findIndex(({ tag }) => tag === floor);
  if (index < 0) return [];
  const settings = book.floors?.[index]?.settings ?? [];
  const at = settings.findIndex(({ lane, format }) => lane === row.on && format === row.format);
  const path = `/floors/${index}/settings`;
  if (at >= 0) return [{ path: `${path}/${at}/${row.sort}`, value: count }];
  const value = {
    lane: row.on,
    ...(row.format === undefined ? {} : { format: row.format }),
    [row.sort]: count,
  };
  return [{ path: `${path}/-`, value }];
};

/** A number, a claim or a word stands in the book as itself; a quantity as it was written. */
const asAt = (book: Book, path: string, { text, value }: SettingAt): unknown =>
  typeof valueAt(book, path) === 'number' && value !== undefined ? value : text;

/**
 * What a value of a setting would put into the book.
 *
 * Symbols  floor  the one on which the line is then looked at
 * Returns  nothing where the book has no place for it, and for what is of another floor
 */
export const settingPatches = (
  row: SettingRow,
  book: Book,
  floor: string,
  at: SettingAt,
): readonly Patch[] => {
  if (row.floor !== undefined && row.floor !== floor) return [];
  if (row.sort === 'preset' || row.sort === 'changeOver') {
    return at.value === undefined ? [] : countPatches(row, book, floor, at.value);
  }
  return row.paths.map((path) => ({ path, value: asAt(book, path, at) }));
};

/** Whether one of two places is the other or lies within it. */
export const isWithin = (one: string, other: string): boolean => {
  const [a, b] = [stepsOf(one), stepsOf(other)];
  return a.slice(0, b.length).every((step, i) => step === b[i]);
};
