import type { Problem } from '../quantity/problem.ts';
import { placeAt } from './place-at.ts';
import { problemOf, shown } from './problem-of.ts';
import { readSetting, type SettingForm, settingForm } from './setting-value.ts';
import { tagPath } from './tag-path.ts';
import { valueAt } from './value-at.ts';

const isText = (value: unknown): value is string => typeof value === 'string';

/** Where the value of an own setting stands; undefined where it says of none, or of a thing that is not there. */
export const settingPlace = (data: unknown, setting: unknown): string | undefined => {
  const [on, of] = [valueAt(setting, '/on'), valueAt(setting, '/of')];
  if (!isText(on) || !isText(of)) return undefined;
  const thing = tagPath(data, on);
  return thing === undefined ? undefined : `${thing}/${of.replace(/^\/+/, '')}`;
};

/** How its value is read: by its unit, else by the place at which it stands. */
export const ownSettingForm = (data: unknown, setting: unknown): SettingForm => {
  const unit = valueAt(setting, '/unit');
  const place = settingPlace(data, setting);
  const form = place === undefined ? undefined : placeAt(data, place)?.form;
  if (form?.is === 'quantity')
    return { is: 'quantity', kind: form.quantity.kind, unit: isText(unit) ? unit : '' };
  if (form?.is === 'number') return form.whole ? { is: 'count' } : { is: 'number', unit: '' };
  return settingForm(isText(unit) ? unit : undefined);
};

const boundProblems = (
  setting: unknown,
  form: SettingForm,
  steps: readonly (string | number)[],
): readonly Problem[] => {
  // words have no order
  if (form.is === 'text') return [];
  const problems: Problem[] = [];
  const read = (key: string): number | undefined => {
    const text = valueAt(setting, `/${key}`);
    if (!isText(text)) return undefined;
    const one = readSetting(form, text, `/${[...steps, key].join('/')}`);
    if (!one.ok) problems.push(...one.problems);
    return one.ok ? one.value.value : undefined;
  };
  const [least, most, value] = ['least', 'most', 'value'].map(read);
  const said = (key: string): string => shown(valueAt(setting, `/${key}`));
  const more = (key: string, than: string): Problem =>
    problemOf('BOOK_MORE_THAN', [...steps, key], {
      given: said(key),
      parts: { than, limit: said(than) },
    });
  if (least !== undefined && most !== undefined && least > most) problems.push(more('least', 'most'));
  else if (value !== undefined && most !== undefined && value > most) problems.push(more('value', 'most'));
  else if (value !== undefined && least !== undefined && value < least) problems.push(more('least', 'value'));
  return problems;
};

/**
 * What is wrong with the settings that the book adds: bounds that can't be read in their unit or stand the wrong way
 * round, a value outside them, a place that the thing does not have.
 *
 * Problems those of `readSetting`, BOOK_MORE_THAN, BOOK_PLACE_UNKNOWN
 * Cost     O(settings + size of the book)
 */
export const settingProblems = (data: unknown): readonly Problem[] => {
  const settings = valueAt(data, '/line/settings');
  if (!Array.isArray(settings)) return [];
  return settings.flatMap((setting: unknown, i) => {
    const steps = ['line', 'settings', i] as const;
    const place = settingPlace(data, setting);
    const form = place === undefined ? undefined : placeAt(data, place)?.form;
    const given = shown(valueAt(setting, '/of'));
    return [
      ...(place !== undefined && (form === undefined || form.is === 'part' || form.is === 'list')
        ? [problemOf('BOOK_PLACE_UNKNOWN', [...steps, 'of'], { given })]
        : []),
      ...boundProblems(setting, ownSettingForm(data, setting), steps),
    ];
  });
};
