import { formatQuantity, type Kind, parseQuantity, type UnitSystem } from '../quantity/index.ts';
import { accept, type Problem, type Result, refuse } from '../quantity/problem.ts';
import { isCustomary } from '../quantity/unit-choice.ts';
import type { Field, Sheet, Value } from '../sheets/frame.ts';
import { cliProblem } from './problems.ts';

export interface TypedInputs {
  readonly values: Readonly<Record<string, Value>>;
  /** What was typed, by input, for a problem that repeats it. */
  readonly texts: Readonly<Record<string, string>>;
  /** As they were understood: a bare `gal` is printed as `US gal`. */
  readonly shown: Readonly<Record<string, string>>;
  /** The unit that was typed for a kind, where it was one. */
  readonly units: Readonly<Partial<Record<Kind, string>>>;
  /** Whose units the typist thinks in. */
  readonly system: UnitSystem;
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
    shown: read
      .flatMap((one) => (one.ok ? [one.value] : []))
      // as many digits as were typed: what is printed must be what was computed with
      .map(
        ({ value, unit, digits }) =>
          formatQuantity(value, kind, { locale, unit, digits: Math.max(digits, 4) }).text,
      )
      .join('; '),
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
  const understood: Record<string, string> = {};
  const typedUnits = new Map<Kind, Set<string>>();
  const keepUnit = (kind: Kind, unit: string | undefined): void => {
    if (unit !== undefined) typedUnits.set(kind, (typedUnits.get(kind) ?? new Set()).add(unit));
  };
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
      problems.push({ code: 'SHEET_INPUT_UNKNOWN', path: name, given: name, allowed: names });
    } else if (field.type === 'choice') {
      texts[name] = text;
      values[name] = text;
      understood[name] = text;
    } else if (field.type === 'list') {
      const parts = listed(text, name);
      if (!parts.ok) problems.push(...parts.problems);
      else {
        const read = readNumbers(parts.value, field.kind, name, locale);
        problems.push(...read.problems);
        values[name] = [...((values[name] as readonly number[] | undefined) ?? []), ...read.values];
        texts[name] = texts[name] === undefined ? text : `${texts[name]}; ${text}`;
        understood[name] = understood[name] === undefined ? read.shown : `${understood[name]}; ${read.shown}`;
        keepUnit(field.kind, read.unit);
      }
    } else if (texts[name] !== undefined) {
      problems.push(cliProblem('CLI_SHEET_TWICE', name, { given: text }));
    } else {
      const read = readNumbers([text], field.kind, name, locale);
      problems.push(...read.problems);
      texts[name] = text;
      understood[name] = read.shown;
      if (read.values[0] !== undefined) values[name] = read.values[0];
      keepUnit(field.kind, read.unit);
    }
  }
  if (problems.length > 0) return refuse(...problems);
  const units = [...typedUnits].flatMap(([kind, ids]) =>
    ids.size === 1 ? [[kind, [...ids][0]] as const] : [],
  );
  const customary = [...typedUnits.values()].some((ids) => [...ids].some(isCustomary));
  return accept({
    values,
    texts,
    shown: understood,
    units: Object.fromEntries(units),
    system: customary ? 'us' : 'metric',
  });
};
