import type { Step } from '../../fill/worksheet.ts';
import type { Sheet } from '../../sheets/frame.ts';
import { sheetAddress } from '../shell/route.ts';
import type { Words } from '../words/words.ts';

/** The sheet of a step with the numbers of the step in its fields. */
export const stepAddress = (words: Words, { sheet: id, inputs }: Step, sheet: Sheet | undefined): string => {
  if (sheet === undefined) return sheetAddress(id);
  const texts = Object.entries(sheet.inputs).flatMap(([name, field]) => {
    const value = inputs[name];
    if (value === undefined) return [];
    if (field.type === 'choice' || typeof value === 'string') return [[name, String(value)]];
    const one = (n: number): string => words.quantity(n, field.kind, { units: 'book', digits: 9 }).text;
    return [[name, typeof value === 'number' ? one(value) : value.map(one).join('; ')]];
  });
  return sheetAddress(id, Object.fromEntries(texts) as Readonly<Record<string, string>>);
};
