import type { SettingRow, SettingWords } from '../proof/settings/index.ts';
import type { PaperWords } from './paper-words.ts';

/** What a setting is called, with the bottle that it is for where there is one for each. */
export const settingName = (row: SettingRow, { name }: SettingWords, { book, say }: PaperWords): string => {
  const format = book.line?.formats?.find(({ tag }) => tag === row.format)?.name ?? row.format;
  return format === undefined ? name(row) : say('setting.for', { what: name(row), format });
};
