import type { SettingMoment } from '../../record/setting-moments.ts';
import type { Tab } from '../../table/table.ts';
import type { Parts } from '../../text/index.ts';

/** Columns of a sheet of settings in the order in which they are written. */
export const settingColumns = [
  'place',
  'what',
  'format',
  'unit',
  'allowed',
  'run-off',
  'shipped',
  'as left',
  'why',
  'by',
  'remark',
  'id',
] as const satisfies readonly (string | SettingMoment)[];

export type SettingColumn = (typeof settingColumns)[number];

export type ColumnPlaces = Readonly<Record<SettingColumn, number>>;

type Say = (key: string, parts?: Parts) => string;

const plain = (text: string): string => text.trim().toLowerCase();

/** A row is that of the headings where it has the id and at least two more, so that no value passes for one. */
const leastHeadings = 3;

/** Where the columns stand in a sheet that came back, by their headings, wherever they were moved to. */
export const findSettingColumns = (
  rows: Tab['rows'],
  say: Say,
): { readonly places: ColumnPlaces; readonly from: number } | undefined => {
  const headings = settingColumns.map((column) => plain(say(`settingSheet.column.${column}`)));
  for (const [at, row] of rows.entries()) {
    const cells = row.map(plain);
    const found = headings.map((heading) => cells.indexOf(heading));
    if (found.at(-1)! < 0 || found.filter((place) => place >= 0).length < leastHeadings) continue;
    const places = Object.fromEntries(settingColumns.map((column, i) => [column, found[i]!]));
    return { places: places as ColumnPlaces, from: at + 1 };
  }
  return undefined;
};
