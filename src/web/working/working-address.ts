import type { Working } from '../../floor/assessment.ts';
import type { Sheet } from '../../sheets/frame.ts';
import { sheetAddress } from '../shell/route.ts';
import type { Words } from '../words/words.ts';

/** Enough that the sheet gives the working's own figures. */
const digits = 9;

/** The sheet of a working with its inputs, as texts that the sheet's own fields read again. */
export const workingAddress = (
  words: Words,
  { sheet: id, inputs }: Pick<Working, 'sheet' | 'inputs'>,
  fields: Sheet['inputs'],
): string => {
  const texts = Object.entries(fields).flatMap(([name, field]) => {
    const value = inputs[name];
    if (value === undefined) return [];
    if (field.type === 'choice' || typeof value === 'string') return [[name, String(value)]];
    const one = (n: number) => words.quantity(n, field.kind, { units: 'book', digits }).text;
    return [[name, typeof value === 'number' ? one(value) : value.map(one).join('; ')]];
  });
  return sheetAddress(id, Object.fromEntries(texts));
};
