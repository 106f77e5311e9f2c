import { settingMoments } from '../../record/setting-moments.ts';
import type { Table, TableCell } from '../../table/table.ts';
import type { Parts } from '../../text/index.ts';
import type { RegisterRow, SettingRegister } from './register.ts';
import { type SettingColumn, settingColumns } from './setting-columns.ts';
import type { SettingWords } from './setting-words.ts';

const widths: Readonly<Record<SettingColumn, number>> = {
  place: 18,
  what: 36,
  format: 12,
  unit: 8,
  allowed: 20,
  'run-off': 14,
  shipped: 14,
  'as left': 14,
  why: 24,
  by: 18,
  remark: 24,
  id: 4,
};

const label = (text: string): TableCell => ({ text });
const open = (text = ''): TableCell => ({ text, open: true });

/** The last of what was said, which is that of the latest moment. */
const lastSaid = ({ at }: RegisterRow, key: 'why' | 'by' | 'remark'): string =>
  settingMoments.map((moment) => at[moment]?.record[key]).findLast((said) => said !== undefined) ?? '';

/**
 * The register as a sheet: what and where locked, the values of the three moments with why, who and remark open. What
 * comes back is read by `readSettingTable`.
 */
export const settingTable = (
  { rows }: SettingRegister,
  words: SettingWords,
  say: (key: string, parts?: Parts) => string,
): Table => ({
  name: say('settingSheet.name'),
  lead: [say('settingSheet.lead')],
  columns: settingColumns.map((column) => ({
    heading: say(`settingSheet.column.${column}`),
    width: widths[column],
    ...(column === 'id' ? { hidden: true } : {}),
  })),
  rows: rows.map((one) => {
    const { row, range, at } = one;
    return [
      label(words.place(row)),
      label(words.name(row)),
      label(row.format === undefined ? '' : words.thing(row.format)),
      label(words.unit(row)),
      label(words.range(row, range)),
      ...settingMoments.map((moment) => open(at[moment]?.text)),
      open(lastSaid(one, 'why')),
      open(lastSaid(one, 'by')),
      open(lastSaid(one, 'remark')),
      label(row.id),
    ];
  }),
});
