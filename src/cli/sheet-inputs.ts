import { type Kind, parseQuantity } from '../quantity/index.ts';
import { accept, type Problem, type Result, refuse } from '../quantity/problem.ts';
import type { Field, Sheet, Value } from '../sheets/frame.ts';
import { nearestName } from './nearest-name.ts';
import { cliProblem } from './problems.ts';

export interface TypedInputs {
  readonly values: Readonly<Record<string, Value>>;
  /** What was typed, by input, for a problem that repeats it. */
  readonly texts: Readonly<Record<string, string>>;
  /** The first unit that was typed for a kind. */
  readonly units: Readonly<Partial<Record<Kind, string>>>;
}

/** Parts a list at semicolons, or at commas where none can be a decimal mark. */
const listed = (text: string, path: string): Result<readonly string[]> => {
  const parts = (text.includes(';') ? text.split(';') : text.split(/,(?!\d)|(?<!\d),/)).map((part) =>
    part.trim(),
  );
  if (!text.includes(';') && parts.some((part) => part.includes(','))) {
    return refuse(cliProblem('CLI_LIST_COMMA', path, { given: text }));
  }
  return accept(parts.filter((part) => part !== ''));
};

const readNumbers = (texts: readonly string[], kind: Kind, path: string, locale: string) => {
  const read = texts.map((text) => parseQuantity(text, kind, { path, locale }));
  return {
    problems: read.flatMap((one) => (one.ok ? [] : one.problems)),
    values: read.flatMap((one) => (one.ok ? [one.value.value as number] : [])),
    unit: read.flatMap((one) => (one.ok ? [one.value.unit] : []))[0],
  };
};

/**
 * The inputs of a sheet from `name=value` pairs with any units; a repeated name makes a list longer.
 *
 * Returns  SI values by input, the texts as typed, the units that were typed
 * Problems CLI_SHEET_PAIR, CLI_SHEET_TWICE, CLI_LIST_COMMA, SHEET_INPUT_UNKNOWN, those of quantities
 * Cost     O(length)
 */
export const readSheetInputs = (
  sheet: Sheet,
  pairs: readonly string[],
  locale: string,
): Result<TypedInputs> => {
  const problems: Problem[] = [];
  const texts: Record<string, string> = {};
  const values: Record<string, Value> = {};
  const units: Partial<Record<Kind, string>> = {};
  const names = Object.keys(sheet.inputs);
  for (const pair of pairs) {
    const cut = pair.indexOf('=');
    const name = pair.slice(0, Math.max(cut, 0)).trim();
    const text = pair.slice(cut + 1).trim();
    const field: Field | undefined = Object.hasOwn(sheet.inputs, name) ? sheet.inputs[name] : undefined;
    if (cut <= 0) {
      problems.push(
        cliProblem('CLI_SHEET_PAIR', sheet.id, { given: pair, allowed: `${names[0] ?? 'name'}="1.2 m"` }),
      );
    } else if (field === undefined) {
      const nearest = nearestName(name, names);
      problems.push({ code: 'SHEET_INPUT_UNKNOWN', path: name, given: name, allowed: nearest ?? names });
    } else if (field.type === 'choice') {
      texts[name] = text;
      values[name] = text;
    } else if (field.type === 'list') {
      const parts = listed(text, name);
      if (!parts.ok) problems.push(...parts.problems);
      else {
        const read = readNumbers(parts.value, field.kind, name, locale);
        problems.push(...read.problems);
        values[name] = [...((values[name] as readonly number[] | undefined) ?? []), ...read.values];
        texts[name] = texts[name] === undefined ? text : `${texts[name]}; ${text}`;
        if (read.unit !== undefined) units[field.kind] ??= read.unit;
      }
    } else if (texts[name] !== undefined) {
      problems.push(cliProblem('CLI_SHEET_TWICE', name, { given: text }));
    } else {
      const read = readNumbers([text], field.kind, name, locale);
      problems.push(...read.problems);
      texts[name] = text;
      if (read.values[0] !== undefined) values[name] = read.values[0];
      if (read.unit !== undefined) units[field.kind] ??= read.unit;
    }
  }
  return problems.length > 0 ? refuse(...problems) : accept({ values, texts, units });
};
