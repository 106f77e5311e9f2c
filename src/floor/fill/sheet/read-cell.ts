import { accept, type Result, refuse } from '../../../quantity/problem.ts';
import { readEntry } from '../../../quantity/read-entry.ts';
import type { SheetWords } from '../../questions/sheet-words.ts';
import { fillProblem } from '../problems.ts';
import type { CellForm } from './columns.ts';
import { plain } from './find-headings.ts';

export type CellValue = string | number | boolean;

const isMoment = /^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}:\d{2}(\.\d+)?(Z|[+-]\d{2}:\d{2})$/;

/** Words that mean a choice: its own, that of the sheet, and what else people write. */
const meaning = (key: string, words: SheetWords): readonly string[] => [
  plain(words.say(`fillSheet.${key}`)),
  ...words.say(`fillSheet.also.${key}`).split('|').map(plain),
];

const chosen = (text: string, keys: readonly string[], words: SheetWords): string | undefined =>
  keys.find((key) => meaning(key, words).includes(plain(text)));

/** A number with a unit behind it; a bare one takes that of the heading. */
const quantityText = (
  text: string,
  { kind }: Extract<CellForm, { is: 'quantity' }>,
  unit: string | undefined,
  path: string,
  locale: string | undefined,
): Result<string> => {
  /** As a reader of any language understands it: a record does not say in which one it was typed. */
  const kept = (typed: string, value: number): Result<string> => {
    const plain = [typed, typed.replace(',', '.')].find((each) => {
      const read = readEntry(each, kind, { path });
      return read.ok && read.value.value === value;
    });
    return plain === undefined
      ? refuse(fillProblem('FILL_NUMBER_MARKS', path, { given: typed }))
      : accept(plain);
  };
  const alone = readEntry(text, kind, { path, locale });
  if (alone.ok) return kept(text, alone.value.value);
  const lacksUnit = alone.problems.every(({ code }) => code === 'QUANTITY_UNIT_MISSING');
  if (!lacksUnit || unit === undefined) return alone;
  const both = `${text} ${unit}`;
  const together = readEntry(both, kind, { path, locale });
  return together.ok ? kept(both, together.value.value) : together;
};

/**
 * What a cell says, in the form in which a record keeps it.
 *
 * Symbols  unit  that of the heading; the cell's own goes before it
 *          path  name of the field
 * Problems FILL_NOT_A_COUNT, FILL_NOT_A_CHOICE, FILL_MOMENT, FILL_NUMBER_MARKS, those of readEntry
 */
export const readCell = (
  text: string,
  form: CellForm,
  unit: string | undefined,
  path: string,
  words: SheetWords,
  locale?: string,
): Result<CellValue> => {
  if (form.is === 'text') return accept(text);
  if (form.is === 'quantity') return quantityText(text, form, unit, path, locale);
  if (form.is === 'count') {
    // a spreadsheet may write 803 as 803.0
    const number = /^\d{1,15}([.,]0+)?$/.test(text) ? Math.round(Number(text.replace(',', '.'))) : undefined;
    return number === undefined
      ? refuse(fillProblem('FILL_NOT_A_COUNT', path, { given: text }))
      : accept(number);
  }
  if (form.is === 'moment') {
    const allowed = '2027-03-08T09:10:00Z';
    return isMoment.test(text) && !Number.isNaN(Date.parse(text))
      ? accept(text)
      : refuse(fillProblem('FILL_MOMENT', path, { given: text, allowed }));
  }
  if (form.is === 'flag') {
    const key = chosen(text, ['yes', 'no'], words);
    const allowed = ['yes', 'no'].map((one) => words.say(`fillSheet.${one}`));
    return key === undefined
      ? refuse(fillProblem('FILL_NOT_A_CHOICE', path, { given: text, allowed }))
      : accept(key === 'yes');
  }
  const keys = form.of.map((one) => `${path}.${one}`);
  const key = chosen(text, keys, words);
  const allowed = keys.map((one) => words.say(`fillSheet.${one}`));
  return key === undefined
    ? refuse(fillProblem('FILL_NOT_A_CHOICE', path, { given: text, allowed }))
    : accept(key.slice(path.length + 1));
};
