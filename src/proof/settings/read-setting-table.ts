import { type Book, readSetting } from '../../book/index.ts';
import type { Problem } from '../../quantity/problem.ts';
import { type SettingMoment, settingMoments } from '../../record/setting-moments.ts';
import type { Tab } from '../../table/table.ts';
import type { Parts } from '../../text/index.ts';
import { isSameSetting } from './compare-settings.ts';
import { floorOfMoment } from './floor-of-moment.ts';
import { settingProblem } from './problems.ts';
import type { RegisterRow, SettingRegister } from './register.ts';
import { type ColumnPlaces, findSettingColumns, type SettingColumn } from './setting-columns.ts';
import type { SettingWords } from './setting-words.ts';

/** What a cell of the sheet puts into the records. */
export interface TakenSetting {
  /** As the spreadsheet numbers it. */
  readonly row: number;
  readonly setting: string;
  readonly floor: string;
  readonly moment: SettingMoment;
  readonly value: string;
  readonly by: string;
  readonly why?: string;
  readonly remark?: string;
  /** What was recorded before, where something was. */
  readonly before?: string;
}

export interface SettingNotUnderstood {
  readonly row: number;
  readonly setting?: string;
  readonly given: string;
  readonly problems: readonly Problem[];
}

/** Row by row what a sheet of settings that came back holds. */
export interface SettingsRead {
  readonly taken: readonly TakenSetting[];
  readonly notUnderstood: readonly SettingNotUnderstood[];
  /** Rows that say what the records say. */
  readonly unchanged: number;
  /** Rows without a value. */
  readonly empty: number;
  /** Ids that have no row any more. */
  readonly missing: readonly string[];
}

export interface ReadSettingsOptions {
  readonly book: Book;
  readonly words: SettingWords;
  readonly say: (key: string, parts?: Parts) => string;
  /** Who brings the sheet, for rows that name nobody. */
  readonly by?: string;
}

interface SheetRow {
  readonly row: number;
  readonly cell: (column: SettingColumn) => string;
}

const sheetRow = (cells: readonly string[], places: ColumnPlaces, row: number): SheetRow => ({
  row,
  cell: (column) => (cells[places[column]] ?? '').trim(),
});

const plain = (text: string): string => text.trim().toLowerCase().replace(/\s+/g, ' ');

const valuesOf = ({ cell }: SheetRow): string =>
  settingMoments
    .map(cell)
    .filter((text) => text !== '')
    .join(', ');

type Understood =
  | { readonly is: 'problems'; readonly problems: readonly Problem[] }
  | { readonly is: 'values'; readonly taken: readonly TakenSetting[] };

/** What a row that names a setting says: every value of it, or every problem. */
const understand = (
  sheet: SheetRow,
  known: RegisterRow,
  { book, words, by: bringer = '' }: ReadSettingsOptions,
  labels: ReadonlySet<string>,
): Understood => {
  const { cell, row } = sheet;
  const { id, form } = known.row;
  const problems: Problem[] = [];
  const what = plain(cell('what'));
  // a changed wording is no matter; the wording of another setting is
  if (what !== plain(words.name(known.row)) && labels.has(what)) {
    problems.push(settingProblem('SETTING_TORN', id, { given: cell('what') }));
  }
  const [why, remark] = [cell('why'), cell('remark')];
  const by = cell('by') || bringer;
  const taken = settingMoments.flatMap((moment): readonly TakenSetting[] => {
    const text = cell(moment);
    const stands = known.at[moment];
    if (text === '' || text === stands?.text) return [];
    const read = readSetting(form, text, id);
    if (!read.ok) {
      problems.push(...read.problems);
      return [];
    }
    if (stands !== undefined && isSameSetting(stands, { ...stands, ...read.value })) return [];
    const floor = stands?.record.floor ?? known.row.floor ?? floorOfMoment(book, moment) ?? '';
    return [
      {
        row,
        setting: id,
        floor,
        moment,
        value: read.value.text,
        by,
        ...(why === '' ? {} : { why }),
        ...(remark === '' ? {} : { remark }),
        ...(stands === undefined ? {} : { before: stands.text }),
      },
    ];
  });
  if (taken.length > 0 && by === '') problems.push(settingProblem('SETTING_NO_NAME', id));
  return problems.length > 0 ? { is: 'problems', problems } : { is: 'values', taken };
};

/**
 * Reads a sheet of settings that came back, whatever was done to it: rows sorted, moved or deleted, columns moved. The id
 * says which setting a row is of.
 *
 * Method   a row is taken wholly or not at all; a cell that says what the records say brings nothing. An emptied cell takes
 *          nothing back: a record is only replaced by a value
 * Symbols  rows  of the tab, from its first
 * Problems those of `problems.ts` and of `readSetting`, at the row that has them
 * Cost     O(rows)
 */
export const readSettingTable = (
  rows: Tab['rows'],
  register: SettingRegister,
  options: ReadSettingsOptions,
): SettingsRead => {
  const found = findSettingColumns(rows, options.say);
  const nothing = { taken: [], unchanged: 0, empty: 0 };
  const known = new Map(register.rows.map((one) => [one.row.id, one]));
  if (found === undefined) {
    const problems = [settingProblem('SETTING_NO_HEADER', '')];
    return { ...nothing, notUnderstood: [{ row: 1, given: '', problems }], missing: [] };
  }
  const sheet = rows
    .slice(found.from)
    .map((cells, at) => sheetRow(cells, found.places, found.from + at + 1))
    .filter(
      ({ cell }) => cell('id') !== '' || cell('what') !== '' || settingMoments.some((m) => cell(m) !== ''),
    );
  const labels = new Set(register.rows.map(({ row }) => plain(options.words.name(row))));
  const byId = new Map<string, SheetRow[]>();
  for (const one of sheet) {
    const id = one.cell('id');
    if (id !== '' && valuesOf(one) !== '') byId.set(id, [...(byId.get(id) ?? []), one]);
  }
  const taken: TakenSetting[] = [];
  const notUnderstood: SettingNotUnderstood[] = [];
  let [unchanged, empty] = [0, 0];
  for (const one of sheet) {
    const id = one.cell('id');
    const given = valuesOf(one);
    const row = known.get(id);
    const refused = (...problems: readonly Problem[]): void => {
      notUnderstood.push({ row: one.row, given, problems, ...(id === '' ? {} : { setting: id }) });
    };
    const same = byId.get(id) ?? [];
    if (given === '') empty += 1;
    else if (id === '') refused(settingProblem('SETTING_NO_ID', '', { given }));
    else if (row === undefined) refused(settingProblem('SETTING_UNKNOWN', id, { given: id }));
    else if (same.length > 1) {
      refused(settingProblem('SETTING_TWICE', id, { parts: { rows: same.map((s) => s.row).join(', ') } }));
    } else {
      const read = understand(one, row, options, labels);
      if (read.is === 'problems') refused(...read.problems);
      else if (read.taken.length === 0) unchanged += 1;
      else taken.push(...read.taken);
    }
  }
  const there = new Set(sheet.map(({ cell }) => cell('id')));
  return {
    taken,
    notUnderstood,
    unchanged,
    empty,
    missing: [...known.keys()].filter((id) => !there.has(id)),
  };
};
