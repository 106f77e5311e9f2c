import { unitsOf } from '../quantity/convert.ts';
import type { Kind } from '../quantity/kinds.ts';
import { parseQuantity } from '../quantity/parse-quantity.ts';
import { accept, type Problem, type Result, refuse } from '../quantity/problem.ts';
import { findUnit, kindsOfUnit } from '../quantity/unit-lookup.ts';
import type { BookProblemCode } from './problems.ts';

/** How the value of a setting is read. */
export type SettingForm =
  | {
      readonly is: 'quantity';
      readonly kind: Kind;
      /** Taken where a number comes without one. */
      readonly unit: string;
    }
  /** In a unit that people agreed on: turns, holes, a mark on a scale. */
  | { readonly is: 'number'; readonly unit: string }
  | { readonly is: 'count' }
  /** A SHA-256, of a backup. */
  | { readonly is: 'digest' }
  | { readonly is: 'text' };

/** What a setting is set to. */
export interface SettingValue {
  /** As it is written down: with its unit. */
  readonly text: string;
  /** In SI where it is a quantity; absent for words. */
  readonly value?: number;
}

/** The form of a setting by the unit that it is read in; without one it is words. */
export const settingForm = (unit: string | undefined): SettingForm => {
  if (unit === undefined || unit.trim() === '') return { is: 'text' };
  const [kind] = kindsOfUnit(unit);
  return kind === undefined ? { is: 'number', unit: unit.trim() } : { is: 'quantity', kind, unit };
};

const wrong = (code: BookProblemCode, path: string, given: string, allowed: string): Result<never> =>
  refuse({ code, path, given, allowed });

const lacksUnit = (problems: readonly Problem[]): boolean =>
  problems.every(({ code }) => code === 'QUANTITY_UNIT_MISSING');

const plain = (text: string): string => text.toLowerCase().replace(/\s+/g, ' ').trim();

/** A number in a unit of people's own; the unit may stand behind it, another may not. */
const ownNumber = (text: string, unit: string, path: string): Result<SettingValue> => {
  const [, number = '', rest = ''] = /^([+\u2212-]?[\d.,\s]*\d)\s*(.*)$/.exec(text) ?? [];
  if (number === '' || (rest !== '' && plain(rest) !== plain(unit))) {
    return wrong('BOOK_WRONG_TYPE', path, text, unit === '' ? 'number' : `number ${unit}`);
  }
  const read = parseQuantity(number, 'count', { path });
  return read.ok ? accept({ text: `${number.trim()} ${unit}`.trim(), value: read.value.value }) : read;
};

const counted = (text: string, path: string): Result<SettingValue> => {
  const read = parseQuantity(text, 'count', { path });
  const whole = read.ok && Number.isSafeInteger(read.value.value) && read.value.value >= 0;
  return whole
    ? accept({ text, value: read.value.value })
    : wrong('BOOK_WRONG_TYPE', path, text, 'whole number from 0');
};

const digest = (text: string, path: string): Result<SettingValue> => {
  const written = text.toLowerCase().replace(/[\s:-]/g, '');
  return /^[0-9a-f]{64}$/.test(written)
    ? accept({ text: written })
    : wrong('BOOK_WRONG_TYPE', path, text, 'SHA-256, 64 hexadecimal digits');
};

/**
 * What somebody wrote as the value of a setting.
 *
 * Method   a number that comes without a unit takes that of the row; one with a unit of its own keeps it
 * Returns  the text as it is written down and its number
 * Problems those of `parseQuantity`; BOOK_WRONG_TYPE
 */
export const readSetting = (form: SettingForm, typed: string, path: string): Result<SettingValue> => {
  const text = typed.trim();
  switch (form.is) {
    case 'quantity': {
      const alone = parseQuantity(text, form.kind, { path });
      // a bare number is one of the row's unit, also where the kind could be without
      const bare = alone.ok ? alone.value.unit === '' && form.unit !== '' : lacksUnit(alone.problems);
      const written = bare ? `${text} ${form.unit}` : text;
      const read = bare ? parseQuantity(written, form.kind, { path }) : alone;
      return read.ok ? accept({ text: written, value: read.value.value }) : read;
    }
    case 'number':
      return ownNumber(text, form.unit, path);
    case 'count':
      return counted(text, path);
    case 'digest':
      return digest(text, path);
    case 'text':
      return text === ''
        ? wrong('BOOK_WRONG_TYPE', path, text, 'a text that is not empty')
        : accept({ text });
  }
};

/** The unit of a form as it is printed. */
export const unitOfSetting = (form: SettingForm): string => {
  if (form.is === 'quantity')
    return findUnit(form.kind, form.unit)?.label ?? unitsOf(form.kind)[0]?.label ?? '';
  return form.is === 'number' ? form.unit : '';
};
