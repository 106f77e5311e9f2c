import { type Book, ownSettingForm, readSetting, settingPlace } from '../../../book/index.ts';
import type { SettingBound, SettingRow } from '../setting-row.ts';
import { stationWith } from '../station-with.ts';

/** The settings that the book adds to those that it knows by itself. */
export const ownSettings = (book: Book): readonly SettingRow[] =>
  (book.line?.settings ?? []).map((setting, i) => {
    const { tag, on, format, name, value } = setting;
    const form = ownSettingForm(book, setting);
    const place = settingPlace(book, setting);
    const station = on === undefined ? undefined : stationWith(book, on);
    const bound = (key: 'least' | 'most'): { readonly [K in 'least' | 'most']?: SettingBound } => {
      const text = setting[key];
      const path = `/line/settings/${i}/${key}`;
      const read = text === undefined ? undefined : readSetting(form, text, path);
      return read?.ok === true && read.value.value !== undefined
        ? { [key]: { value: read.value.value, text: read.value.text, path } }
        : {};
    };
    return {
      id: tag,
      sort: 'own',
      form,
      range: { ...bound('least'), ...bound('most') },
      paths: place === undefined ? [] : [place],
      ...(on === undefined ? {} : { on }),
      ...(station === undefined ? {} : { station }),
      ...(format === undefined ? {} : { format }),
      ...(name === undefined ? {} : { name }),
      ...(value === undefined ? {} : { designed: value }),
    };
  });
