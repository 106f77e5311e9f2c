import fc from 'fast-check';
import { toSi, unitsOf } from '../../quantity/convert.ts';
import { formatQuantity } from '../../quantity/format-quantity.ts';
import type { Book } from '../book.ts';
import { bookForm, type Form, formFor } from '../form.ts';
import type { QuantityMeta } from '../schema/quantity.ts';
import type { Thing } from '../schema/tag.ts';
import { tagsOf } from '../tag-path.ts';

type Part = Record<string, unknown>;

const awaits = 'awaits a tag of ';

/** Any text with any unit of the kind that lies inside the bounds. */
const anyText = ({ kind, least, above, most }: QuantityMeta): fc.Arbitrary<string> => {
  const inside = (si: number): boolean =>
    (least === undefined || si >= least) &&
    (above === undefined || si > above) &&
    (most === undefined || si <= most);
  return fc
    .record({
      unit: fc.constantFrom(...unitsOf(kind)),
      share: fc.double({ min: 0.001, max: 0.999, noNaN: true }),
      digits: fc.integer({ min: 3, max: 6 }),
    })
    .map(({ unit, share, digits }) => {
      const one = toSi(1, kind, unit.id);
      const wished = one * (1 + 99 * share);
      const top = most ?? Number.POSITIVE_INFINITY;
      const si = inside(wished) ? wished : (least ?? above ?? 0) + share * Math.min(top, 1);
      return formatQuantity(si as never, kind, { unit: unit.id, locale: 'en', digits }).text;
    });
};

const anyQuantity = (meta: QuantityMeta): fc.Arbitrary<unknown> => {
  const said = {
    standing: fc.constantFrom('measured', 'stated', 'assumed'),
    by: fc.string({ maxLength: 20 }),
    on: fc.constant('2027-03-08'),
  };
  const text = anyText(meta);
  return fc.oneof(
    { weight: 3, arbitrary: text },
    { weight: 1, arbitrary: fc.record({ value: text, ...said }, { requiredKeys: ['value'] }) },
    {
      weight: 1,
      arbitrary: fc.record({ value: text.map((each) => [each, each]), ...said }, { requiredKeys: ['value'] }),
    },
  );
};

const anyOf = (form: Form): fc.Arbitrary<unknown> => {
  switch (form.is) {
    case 'quantity':
      return anyQuantity(form.quantity);
    case 'part': {
      const fields = Object.fromEntries([...form.fields].map(([key, field]) => [key, anyOf(field)]));
      return fc.record(fields, { requiredKeys: [...form.must] });
    }
    case 'list':
      return fc.array(anyOf(form.of), { maxLength: 2 });
    case 'row':
      return fc.tuple(...form.of.map(anyOf));
    case 'choice':
      return fc.oneof(
        ...[...form.options].map(([word, option]) =>
          anyOf(option).map((part) => ({ ...(part as Part), [form.by]: word })),
        ),
      );
    case 'either':
      return fc.oneof(...form.of.map(anyOf));
    case 'text':
      if (form.tag !== undefined) {
        const wanted =
          'names' in form.tag || form.tag.refersTo === 'any' ? 'any' : form.tag.refersTo.join('|');
        return fc.constant(`${awaits}${wanted}`);
      }
      if (form.unitOf !== undefined) return fc.constantFrom(...unitsOf(form.unitOf).map(({ id }) => id));
      return form.table === undefined ? fc.string({ maxLength: 30 }) : fc.constantFrom(...form.table.rows);
    case 'word':
      return fc.constantFrom(...form.words);
    case 'number': {
      const { least = 0, most = 1e6 } = form;
      return form.whole
        ? fc.integer({ min: least, max: Math.min(most, 100_000) })
        : fc.double({ min: least, max: most, noNaN: true }).map((value) => value + 0);
    }
    case 'claim':
      return fc.boolean();
  }
};

interface Named {
  readonly tag: string;
  readonly thing: Thing;
}

const nothing = Symbol('no tag fits');

/** Fields of a setting that say what the others mean. */
const readTogether = new Set(['of', 'unit']);

const isSetting = (form: Form & { readonly is: 'part' }): boolean => {
  const field = form.fields.get('tag');
  return (
    field?.is === 'text' && field.tag !== undefined && 'names' in field.tag && field.tag.names === 'setting'
  );
};

/** The data with a tag on each thing, and the things. What would have to be chosen together is left out. */
const tagged = (data: unknown): { readonly data: unknown; readonly named: readonly Named[] } => {
  const named: Named[] = [];
  const give = (value: unknown, either: Form): unknown => {
    const form = formFor(either, value);
    if (form?.is === 'list' && Array.isArray(value)) return value.map((each) => give(each, form.of));
    if (form?.is !== 'part') return value;
    const entries = Object.entries(value as Part).flatMap(([key, inner]): [string, unknown][] => {
      const field = form.fields.get(key)!;
      if (key === 'after' || form.orders.some(([, , second]) => second === key)) return [];
      if (isSetting(form) && readTogether.has(key)) return [];
      if (field.is !== 'text' || field.tag === undefined || !('names' in field.tag))
        return [[key, give(inner, field)]];
      const tag = `-T${named.length + 1}`;
      named.push({ tag, thing: field.tag.names });
      return [[key, tag]];
    });
    return Object.fromEntries(entries);
  };
  return { data: give(data, bookForm), named };
};

/** The data with each reference turned to a thing that fits; what must have one and finds none is left out. */
const referred = (data: unknown, named: readonly Named[]): unknown => {
  let count = 0;
  const settle = (value: unknown, either: Form): unknown => {
    const form = formFor(either, value);
    if (typeof value === 'string' && value.startsWith(awaits)) {
      const wanted = value.slice(awaits.length).split('|');
      const fits = named.filter(({ thing }) => wanted[0] === 'any' || wanted.includes(thing));
      count += 1;
      return fits.length === 0 ? nothing : fits[count % fits.length]!.tag;
    }
    if (form?.is === 'list' && Array.isArray(value)) {
      return value.map((each) => settle(each, form.of)).filter((each) => each !== nothing);
    }
    if (form?.is === 'row' && Array.isArray(value)) {
      const row = value.map((each, index) => settle(each, form.of[index]!));
      return row.includes(nothing) ? nothing : row;
    }
    if (form?.is !== 'part') return value;
    const entries = Object.entries(value as Part).map(
      ([key, inner]) => [key, settle(inner, form.fields.get(key)!)] as const,
    );
    if (entries.some(([key, inner]) => inner === nothing && form.must.includes(key))) return nothing;
    return Object.fromEntries(entries.filter(([, inner]) => inner !== nothing));
  };
  return settle(data, bookForm);
};

/** Gives every thing its tag and every reference a tag that fits, until nothing refers to what was left out. */
const withTags = (data: unknown): unknown => {
  const start = tagged(data);
  let { named } = start;
  for (;;) {
    const settled = referred(start.data, named);
    const there = new Set(tagsOf(settled).map(({ tag }) => tag));
    const still = named.filter(({ tag }) => there.has(tag));
    if (still.length === named.length) return settled;
    named = still;
  }
};

/**
 * Any book that the schema allows: every part and field, any unit, tags that fit. For property tests.
 */
export const anyBook: fc.Arbitrary<Book> = anyOf(bookForm).map((data) => withTags(data) as Book);
