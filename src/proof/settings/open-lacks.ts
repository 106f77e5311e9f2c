import type { Book } from '../../book/index.ts';
import type { Assessment } from '../../floor/assessment.ts';
import { bypassesOf } from '../../record/bypasses.ts';
import type { Envelope } from '../../record/envelope.ts';
import { settingsOf } from '../../record/settings.ts';
import { settingRegister } from './register.ts';
import { settingsOfBook } from './settings-of-book.ts';

/** What the settings of a line keep a gate from: it is named by the id in a signature. */
export interface SettingLack {
  readonly id: string;
  readonly sort: 'bypass' | 'setting' | 'unread';
  readonly holder: 'builder';
  /** Of what is forced or bypassed: the tag of it, and why. */
  readonly of?: string;
  readonly why?: string;
}

/**
 * What is forced or bypassed and was not taken out again: it travels with the line, so it keeps every gate of every floor.
 */
export const bypassLacks = (records: readonly Envelope[]): readonly SettingLack[] =>
  bypassesOf(records)
    .filter(({ removed }) => removed === undefined)
    .map(({ bypass, of, why }) => ({
      id: `bypass ${bypass}`,
      sort: 'bypass',
      holder: 'builder',
      of,
      ...(why === undefined ? {} : { why }),
    }));

/** Settings that were left at a floor beyond what is allowed there, or look like a slip. */
export const leftBeyond = (
  book: Book,
  assessment: Assessment,
  floor: string,
  records: readonly Envelope[],
): readonly SettingLack[] => {
  const left = records.filter(({ kind }) => kind === 'setting');
  // the range of a setting asks the utilities of every floor
  if (left.length === 0) return [];
  return settingRegister(book, assessment, left)
    .rows.filter(({ at }) => {
      const value = at['as left'];
      return (value?.beyond !== undefined || value?.odd === true) && value.record.floor === floor;
    })
    .map(({ row }) => ({ id: `setting ${row.id}`, sort: 'setting', holder: 'builder' }));
};

/** Settings of a floor that nobody has read as they were left there: a service desk would not know them. */
export const neverRead = (
  book: Book,
  floor: string,
  records: readonly Envelope[],
): readonly SettingLack[] => {
  const read = new Set(
    settingsOf(records)
      .filter((one) => one.moment === 'as left' && one.floor === floor)
      .map(({ setting }) => setting),
  );
  return settingsOfBook(book)
    .filter((row) => (row.floor === undefined || row.floor === floor) && !read.has(row.id))
    .map(({ id }) => ({ id: `unread ${id}`, sort: 'unread', holder: 'builder' }));
};
