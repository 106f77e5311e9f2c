import { type Book, readSetting, type SettingValue } from '../../book/index.ts';
import type { Assessment } from '../../floor/assessment.ts';
import type { Problem } from '../../quantity/problem.ts';
import type { Envelope } from '../../record/envelope.ts';
import { type SettingMoment, settingMoments } from '../../record/setting-moments.ts';
import { type RecordedSetting, settingsOf } from '../../record/settings.ts';
import { isOdd } from './is-odd.ts';
import { settingProblem } from './problems.ts';
import { rangeOnFloor } from './range-on-floor.ts';
import type { SettingRange, SettingRow } from './setting-row.ts';
import { settingsOfBook } from './settings-of-book.ts';

/** A setting as it was recorded at one moment. */
export interface SettingAt extends SettingValue {
  readonly record: RecordedSetting;
  /** The end of the allowed range that it lies beyond, on the floor on which it was read. */
  readonly beyond?: 'least' | 'most';
  /** No bound speaks of it and it looks like a slip: a person is asked. */
  readonly odd?: boolean;
}

export interface RegisterRow {
  readonly row: SettingRow;
  /** What is allowed on the floor that the line is bound for. */
  readonly range: SettingRange;
  readonly at: Readonly<Partial<Record<SettingMoment, SettingAt>>>;
}

export interface SettingRegister {
  readonly rows: readonly RegisterRow[];
  /** Records that name no row, and values that can't be read in their unit. */
  readonly problems: readonly Problem[];
}

/** A value beyond a bound by less than this share of it was typed as the bound. */
const still = 1e-9;

const beyond = ({ least, most }: SettingRange, value: number | undefined): 'least' | 'most' | undefined => {
  if (value === undefined) return undefined;
  const slack = (bound: number): number => still * Math.abs(bound);
  if (least !== undefined && value < least.value - slack(least.value)) return 'least';
  return most !== undefined && value > most.value + slack(most.value) ? 'most' : undefined;
};

/**
 * The register of everything that can be turned, typed or moved, with what was recorded of it.
 *
 * Method   rows of the book; of the records of one row and moment the last; each held against what its floor allows
 * Symbols  records  the set, whole by verifyRecords
 * Returns  rows in the order of the stations, and every record that could not be taken
 * Cost     the utilities of the floors, if nobody asked for them yet, then O(rows + records)
 */
export const settingRegister = (
  book: Book,
  assessment: Assessment,
  records: readonly Envelope[] = [],
): SettingRegister => {
  const rows = settingsOfBook(book);
  const known = new Map(rows.map((row) => [row.id, row]));
  const floors = new Map(assessment.floors.map((one) => [one.floor, one]));
  const site = assessment.floors.find(({ role }) => role === 'bound for') ?? assessment.floors[0];
  const last = new Map<string, RecordedSetting>();
  const problems: Problem[] = [];
  for (const one of settingsOf(records)) {
    const path = `/records/${one.id}/body`;
    if (!known.has(one.setting)) {
      problems.push(settingProblem('SETTING_UNKNOWN', `${path}/setting`, { given: one.setting }));
    } else if (!floors.has(one.floor)) {
      const rest = { given: one.floor, allowed: [...floors.keys()] };
      problems.push(settingProblem('SETTING_FLOOR_UNKNOWN', `${path}/floor`, rest));
    } else last.set(`${one.setting}\n${one.moment}`, one);
  }
  const atOf = (row: SettingRow, moment: SettingMoment, onSite: SettingRange): SettingAt | undefined => {
    const record = last.get(`${row.id}\n${moment}`);
    if (record === undefined) return undefined;
    const read = readSetting(row.form, record.value, `/records/${record.id}/body/value`);
    if (!read.ok) {
      problems.push(...read.problems);
      return { record, text: record.value };
    }
    const range = record.floor === site?.floor ? onSite : rangeOnFloor(row, book, floors.get(record.floor));
    const end = beyond(range, read.value.value);
    return { record, ...read.value, ...(end === undefined ? {} : { beyond: end }) };
  };
  /** Those that look like a slip beside what the book wants and the other moments say. */
  const asked = (
    row: SettingRow,
    at: readonly (readonly [SettingMoment, SettingAt])[],
  ): readonly (readonly [SettingMoment, SettingAt])[] => {
    const designed = row.designed === undefined ? undefined : readSetting(row.form, row.designed, row.id);
    const wanted = designed?.ok === true ? designed.value.value : undefined;
    return at.map(([moment, one]) => {
      const others = at.flatMap(([when, { value }]) => (when === moment ? [] : [value]));
      const known = [wanted, ...others].flatMap((value) => value ?? []);
      const odd = one.value !== undefined && one.beyond === undefined && isOdd(one.value, known);
      return [moment, odd ? { ...one, odd } : one];
    });
  };
  return {
    rows: rows.map((row) => {
      const range = rangeOnFloor(row, book, site);
      const at = settingMoments.flatMap((moment) => {
        const one = atOf(row, moment, range);
        return one === undefined ? [] : [[moment, one] as const];
      });
      return { row, range, at: Object.fromEntries(asked(row, at)) };
    }),
    problems,
  };
};
