import { type Book, kindAt, type SettingForm, valueAt } from '../../book/index.ts';
import { defaultUnit } from '../../quantity/default-unit.ts';
import type { Kind } from '../../quantity/kinds.ts';
import { readEntry } from '../../quantity/read-entry.ts';
import type { SettingBound, SettingRow, SettingSort } from './setting-row.ts';

type Draft = Partial<Omit<SettingRow, 'sort'>>;

/** Id of a setting: its sort and the tags that it is on, `preset -Y11 FLAGON-2L`. */
const settingId = (sort: SettingSort, { on, format }: Draft): string =>
  [sort, on, format].filter((part) => part !== undefined).join(' ');

/** A setting that is read as words and stands nowhere in the book, unless its maker says more. */
export const makeSetting = (sort: SettingSort, draft: Draft): SettingRow => ({
  id: settingId(sort, draft),
  sort,
  form: { is: 'text' },
  range: {},
  paths: [],
  ...draft,
});

/** What a place of the book says of a value, as it was written. */
export const writtenAt = (book: Book, path: string): string | undefined => {
  const stands = valueAt(book, path);
  const value = typeof stands === 'object' && stands !== null ? valueAt(stands, '/value') : stands;
  if (typeof value === 'string' || typeof value === 'number') return String(value);
  return Array.isArray(value) ? value.join(' … ') : undefined;
};

/** The unit in which the book writes a value, else the usual one of its kind. */
export const unitAt = (book: Book, path: string, kind: Kind): string => {
  const read = readEntry(valueAt(book, path), kind, { path });
  return read.ok && read.value.unit !== ''
    ? read.value.unit
    : defaultUnit(kind, book.about?.system ?? 'metric');
};

/** A quantity whose value stands at a place of the book. */
export const placedSetting = (book: Book, sort: SettingSort, path: string, draft: Draft): SettingRow => {
  const kind = kindAt(path);
  const designed = writtenAt(book, path);
  const form: SettingForm =
    kind === undefined ? { is: 'text' } : { is: 'quantity', kind, unit: unitAt(book, path, kind) };
  return makeSetting(sort, {
    form,
    paths: [path],
    ...(designed === undefined ? {} : { designed }),
    ...draft,
  });
};

/** What a place of the book bounds; nothing where it says nothing that can be read. */
export const boundAt = (book: Book, path: string, kind: Kind): SettingBound | undefined => {
  const read = readEntry(valueAt(book, path), kind, { path });
  const text = writtenAt(book, path);
  return read.ok && text !== undefined ? { value: read.value.value, text, path } : undefined;
};
