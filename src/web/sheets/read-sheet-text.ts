import { parseQuantity } from '../../quantity/index.ts';
import { accept, type Result, refuse } from '../../quantity/problem.ts';
import type { Field, Value } from '../../sheets/frame.ts';

/** What was typed into a field of a sheet, as the value that the sheet takes. A list is parted by semicolons. */
export const readSheetText = (
  name: string,
  field: Field,
  text: string,
  locale: string,
): Result<Value | undefined> => {
  const trimmed = text.trim();
  if (trimmed === '') return accept(undefined);
  if (field.type === 'choice') return accept(trimmed);
  const one = (part: string) => parseQuantity(part, field.kind, { path: name, locale });
  if (field.type === 'number') {
    const read = one(trimmed);
    return read.ok ? accept(read.value.value as number) : read;
  }
  const parts = trimmed.split(';').filter((part) => part.trim() !== '');
  const read = parts.map((part) => one(part.trim()));
  const problems = read.flatMap((part) => (part.ok ? [] : part.problems));
  if (problems.length > 0) return refuse(...problems);
  return accept(read.flatMap((part) => (part.ok ? [part.value.value as number] : [])));
};
