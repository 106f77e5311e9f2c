import { fromSi, unitNamed, unitsOf } from '../quantity/convert.ts';
import { type Kind, si } from '../quantity/kinds.ts';
import { parseQuantity } from '../quantity/parse-quantity.ts';
import type { Problem } from '../quantity/problem.ts';
import { type Reading, readEntry } from '../quantity/read-entry.ts';
import { type Form, formFor } from './form.ts';
import { formAt } from './form-at.ts';
import { pointerOf } from './pointer.ts';
import { problemOf, shown } from './problem-of.ts';
import type { Bounds, QuantityMeta } from './schema/quantity.ts';
import { spacedName } from './spaced-name.ts';
import { valueAt } from './value-at.ts';
import { walk } from './walk.ts';

type Part = Form & { readonly is: 'part' };
type Steps = readonly (string | number)[];

/** What can be meant, in the unit in which it was typed. */
const boundsText = ({ least, above, most }: Bounds, kind: Kind, unit: string): string => {
  const { label } = unitNamed(kind, unit);
  const said = (bound: number): string =>
    `${Number(fromSi(si(kind, bound), kind, unit).toPrecision(6))} ${label}`.trim();
  const from = above !== undefined ? `> ${said(above)}` : least !== undefined ? `>= ${said(least)}` : '';
  const to = most === undefined ? '' : `<= ${said(most)}`;
  return [from, to].filter((text) => text !== '').join(', ');
};

/** Whether a value, or an end of a range, lies outside what can be meant. A spread may reach over a bound. */
const outside = ({ value, low, high, shape }: Reading<Kind>, { least, above, most }: Bounds): boolean => {
  const ends = shape === 'range' ? [low, high] : [value];
  return ends.some(
    (end) =>
      (least !== undefined && end < least) ||
      (above !== undefined && end <= above) ||
      (most !== undefined && end > most),
  );
};

const writtenAs = (entry: unknown): string => {
  if (typeof entry !== 'object' || entry === null) return shown(entry);
  const { value } = entry as { value?: unknown };
  return Array.isArray(value) ? value.map(shown).join(' … ') : shown(value);
};

const quantityProblem = (entry: unknown, meta: QuantityMeta, steps: Steps): readonly Problem[] => {
  const read = readEntry(entry, meta.kind, { path: pointerOf(steps) });
  if (!read.ok) return read.problems;
  if (!outside(read.value, meta)) return [];
  const allowed = boundsText(meta, meta.kind, read.value.unit);
  return [problemOf('BOOK_OUT_OF_RANGE', steps, { given: writtenAs(entry), allowed })];
};

/** A unit that is none of its kind. */
const unitProblems = (value: unknown, kind: Kind, steps: Steps): readonly Problem[] => {
  if (typeof value !== 'string' || unitsOf(kind).some(({ id, label }) => id === value || label === value))
    return [];
  // any spelling will do that is read in a quantity
  if (parseQuantity(`1 ${value}`, kind, { path: '' }).ok) return [];
  return [
    problemOf('BOOK_NOT_ONE_OF', steps, {
      given: shown(value),
      allowed: unitsOf(kind).map(({ label }) => label),
    }),
  ];
};

/** What stands in a field, to be held against another: a quantity or a plain number. */
const sizeOf = (entry: unknown, field: Form | undefined): number | undefined => {
  if (field?.is === 'number') return typeof entry === 'number' ? entry : undefined;
  if (entry === undefined || field?.is !== 'quantity') return undefined;
  const read = readEntry(entry, field.quantity.kind, { path: '' });
  return read.ok ? read.value.value : undefined;
};

/** Two quantities or numbers of one part that stand the wrong way round. */
const orderProblems = (
  value: Readonly<Record<string, unknown>>,
  form: Part,
  steps: Steps,
): readonly Problem[] =>
  form.orders.flatMap(([first, sign, second]) => {
    const [one, other] = [first, second].map((key) => sizeOf(value[key], form.fields.get(key)));
    if (one === undefined || other === undefined) return [];
    if (sign === '<' ? one < other : one <= other) return [];
    const code = sign === '<' ? 'BOOK_NOT_LESS' : 'BOOK_MORE_THAN';
    const parts = { than: spacedName(second), limit: writtenAs(value[second]) };
    return [problemOf(code, [...steps, first], { given: writtenAs(value[first]), parts })];
  });

const tableProblems = (
  value: Readonly<Record<string, unknown>>,
  form: Part,
  steps: Steps,
): readonly Problem[] =>
  form.tables.flatMap(([key, { rows, unless }]) => {
    const given = value[key];
    if (typeof given !== 'string' || rows.includes(given) || value[unless] !== undefined) return [];
    return [
      problemOf('BOOK_NOT_IN_TABLE', [...steps, key], {
        given: shown(given),
        allowed: rows,
        parts: { unless },
      }),
    ];
  });

/** What is wrong between the fields of one part. */
const partProblems = (
  value: Readonly<Record<string, unknown>>,
  form: Part,
  steps: Steps,
): readonly Problem[] =>
  form.orders.length + form.tables.length === 0
    ? []
    : [...orderProblems(value, form, steps), ...tableProblems(value, form, steps)];

/**
 * What is wrong with the quantities of a book: units, dimensions, bounds, and pairs of which one must be less.
 *
 * Problems those of `readEntry`; BOOK_OUT_OF_RANGE, BOOK_NOT_LESS, BOOK_MORE_THAN, BOOK_NOT_IN_TABLE
 * Cost     O(size of the data)
 */
export const quantityProblems = (data: unknown): readonly Problem[] => {
  const problems: Problem[] = [];
  walk(data, {
    leaf: (value, form, steps) => {
      if (form.is === 'quantity') problems.push(...quantityProblem(value, form.quantity, steps));
      if (form.is === 'text' && form.unitOf !== undefined)
        problems.push(...unitProblems(value, form.unitOf, steps));
    },
    part: (value, form, steps) => {
      problems.push(...partProblems(value, form, steps));
    },
  });
  return problems;
};

/**
 * The same for one text that was put for a quantity, or for the value of one that says more of itself, in a book of which
 * the rest has been read: such a text can break itself, and what it stands beside in its part.
 *
 * Symbols  data  the book with the text;  steps  its place
 * Returns  undefined where it is no text of a quantity in a part
 * Cost     O(size of the part)
 */
export const quantityPutProblems = (
  data: unknown,
  steps: readonly string[],
): readonly Problem[] | undefined => {
  if (typeof valueAt(data, pointerOf(steps)) !== 'string') return undefined;
  const within = steps.at(-1) === 'value' && formAt(data, steps.slice(0, -1))?.is === 'quantity';
  const place = within ? steps.slice(0, -1) : steps;
  const above = place.slice(0, -1);
  const key = place.at(-1);
  const value = valueAt(data, pointerOf(above));
  const around = formAt(data, above);
  const form = around === undefined ? undefined : formFor(around, value);
  if (key === undefined || form?.is !== 'part' || typeof value !== 'object' || value === null)
    return undefined;
  const part = value as Readonly<Record<string, unknown>>;
  const field = form.fields.get(key);
  if (field?.is !== 'quantity') return undefined;
  return [...partProblems(part, form, above), ...quantityProblem(part[key], field.quantity, place)];
};
