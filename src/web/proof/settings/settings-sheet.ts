import type { Book } from '../../../book/index.ts';
import {
  findSettingColumns,
  readSettingTable,
  type SettingRegister,
  type SettingsRead,
  type SettingWords,
  settingTable,
} from '../../../proof/settings/index.ts';
import { accept, type Result } from '../../../quantity/problem.ts';
import { readTable, writeCsv, writeXlsx } from '../../../table/index.ts';
import type { Words } from '../../words/words.ts';

/** The register as the bytes of a sheet that this page reads again. */
export const writeSettings = (
  register: SettingRegister,
  says: SettingWords,
  { say }: Pick<Words, 'say'>,
  kind: 'xlsx' | 'csv',
): Uint8Array => {
  const table = settingTable(register, says, say);
  return kind === 'csv'
    ? new TextEncoder().encode(writeCsv(table))
    : writeXlsx(table, say('settingSheet.lists'));
};

export interface SheetPlace {
  readonly book: Book;
  readonly register: SettingRegister;
  readonly says: SettingWords;
  readonly words: Pick<Words, 'say'>;
  readonly by: string;
}

/** What a sheet that came back holds, row by row; nothing is written down here. */
export const readSettings = (
  bytes: Uint8Array,
  { book, register, says, words: { say }, by }: SheetPlace,
): Result<SettingsRead> => {
  const tabs = readTable(bytes);
  if (!tabs.ok) return tabs;
  const tab = tabs.value.find(({ rows }) => findSettingColumns(rows, say) !== undefined) ?? tabs.value[0];
  return accept(readSettingTable(tab?.rows ?? [], register, { book, words: says, say, by }));
};
