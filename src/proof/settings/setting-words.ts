import { type Book, tagsOf, unitOfSetting, valueAt } from '../../book/index.ts';
import { formatQuantity } from '../../quantity/index.ts';
import { readEntry } from '../../quantity/read-entry.ts';
import { shown } from '../../quantity/shown.ts';
import type { UnitWishes } from '../../quantity/unit-choice.ts';
import { findUnit } from '../../quantity/unit-lookup.ts';
import type { Parts } from '../../text/index.ts';
import type { SettingBound, SettingRange, SettingRow } from './setting-row.ts';

type Say = (key: string, parts?: Parts) => string;

/** What the rows of a register are called, in the words of a catalogue. */
export interface SettingWords {
  readonly name: (row: SettingRow) => string;
  /** Where it is found: the station, else what it belongs to. */
  readonly place: (row: SettingRow) => string;
  readonly thing: (tag: string) => string;
  readonly unit: (row: SettingRow) => string;
  /** A value as it was typed; in the unit of its row where it was typed in another, so that two can be compared by eye. */
  readonly value: (row: SettingRow, text: string) => string;
  /** The allowed range in one line; empty where nothing is said. */
  readonly range: (row: SettingRow, range: SettingRange) => string;
}

/** More than anybody types. */
const allDigits = 12;

const inOwnUnit = ({ form }: SettingRow, text: string, locale: string): string => {
  if (form.is !== 'quantity') return text;
  const read = readEntry(text, form.kind, { path: '' });
  const own = findUnit(form.kind, form.unit)?.id;
  if (!read.ok || own === undefined || read.value.unit === own || read.value.low < read.value.high)
    return text;
  return formatQuantity(read.value.value, form.kind, { locale, unit: own, digits: allDigits }).text;
};

/**
 * The words of a book's settings.
 *
 * Cost     O(size of the book) once, for the names of its things
 */
export const settingWords = (book: Book, say: Say, locale: string): SettingWords => {
  const places = new Map(tagsOf(book).map(({ tag, path }) => [tag, path]));
  const thing = (tag: string): string => {
    const path = places.get(tag);
    const name = path === undefined ? undefined : valueAt(book, `${path}/name`);
    return typeof name === 'string' && name !== tag ? `${name} ${tag}` : tag;
  };
  const ended = (row: SettingRow, { value, text }: SettingBound): string => {
    if (text !== undefined) return inOwnUnit(row, text, locale);
    if (row.form.is !== 'quantity') return String(value);
    const wishes: UnitWishes = { system: 'metric', byKind: { [row.form.kind]: row.form.unit } };
    return shown(value, row.form.kind, wishes, locale, 4);
  };
  return {
    thing,
    name: (row) =>
      row.sort === 'own'
        ? (row.name ?? row.id)
        : say(`setting.sort.${row.sort}`, { a: row.on === undefined ? '' : thing(row.on) }),
    place: ({ station, floor, on }) => {
      if (station !== undefined) return thing(station);
      return floor === undefined && on === undefined ? say('setting.line') : thing(floor ?? on ?? '');
    },
    unit: (row) => unitOfSetting(row.form),
    value: (row, text) => inOwnUnit(row, text, locale),
    range: (row, { least, most }) => {
      const [low, high] = [least, most].map((bound) => (bound === undefined ? undefined : ended(row, bound)));
      if (low !== undefined && high !== undefined) return say('setting.range', { low, high });
      if (low !== undefined) return say('setting.least', { low });
      return high === undefined ? '' : say('setting.most', { high });
    },
  };
};
