import type * as z from 'zod';
import type { Kind } from '../quantity/kinds.ts';
import { bookSchema } from './schema/book.ts';
import { type Order, orderedFields, tabledFields, unitFields } from './schema/part.ts';
import { type QuantityMeta, quantityFields } from './schema/quantity.ts';
import { type TagMeta, tagFields } from './schema/tag.ts';

/** Names that are known without the field that stands in for their table. */
export interface Table {
  readonly rows: readonly string[];
  readonly unless: string;
}

/** The schema as plain data: what a walk over a book needs to know at each place. */
export type Form =
  | { readonly is: 'quantity'; readonly quantity: QuantityMeta }
  | {
      readonly is: 'part';
      readonly fields: ReadonlyMap<string, Form>;
      readonly orders: readonly Order[];
      readonly tables: readonly (readonly [string, Table])[];
      /** Fields that must be there. */
      readonly must: readonly string[];
    }
  | { readonly is: 'list'; readonly of: Form }
  | { readonly is: 'row'; readonly of: readonly Form[] }
  | {
      readonly is: 'choice';
      readonly by: string;
      readonly options: ReadonlyMap<string, Form>;
      /** What all options have: still known where the word that chooses is missing or wrong. */
      readonly otherwise: Form;
    }
  | { readonly is: 'either'; readonly of: readonly Form[] }
  | { readonly is: 'text'; readonly tag?: TagMeta; readonly table?: Table; readonly unitOf?: Kind }
  | { readonly is: 'word'; readonly words: readonly (string | number)[] }
  | { readonly is: 'number'; readonly whole: boolean; readonly least?: number; readonly most?: number }
  | { readonly is: 'claim' };

type Schema = z.core.$ZodType;
const defOf = (schema: Schema) => (schema as unknown as z.core.$ZodTypes)._zod.def;

const choiceOf = (by: string, options: readonly Schema[], formOf: (schema: Schema) => Form): Form => {
  const byWord = new Map<string, Form>();
  for (const option of options) {
    const form = formOf(option);
    const field = form.is === 'part' ? form.fields.get(by) : undefined;
    if (field?.is === 'word') for (const word of field.words) byWord.set(String(word), form);
  }
  const [first, ...others] = [...byWord.values()].flatMap((form) =>
    form.is === 'part' ? [form.fields] : [],
  );
  const shared = [...(first ?? [])].filter(
    ([key]) => key !== by && others.every((fields) => fields.has(key)),
  );
  return {
    is: 'choice',
    by,
    options: byWord,
    otherwise: { is: 'part', fields: new Map(shared), orders: [], tables: [], must: [] },
  };
};

const numberOf = (schema: Schema): Form => {
  const { minValue, maxValue, isInt } = schema as unknown as z.ZodNumber;
  return {
    is: 'number',
    whole: isInt,
    ...(minValue === null ? {} : { least: minValue }),
    ...(maxValue === null ? {} : { most: maxValue }),
  };
};

const formOfEach = (): ((schema: Schema) => Form) => {
  const known = new Map<Schema, Form>();
  const made = (schema: Schema): Form => {
    const quantity = quantityFields.get(schema);
    if (quantity !== undefined) return { is: 'quantity', quantity };
    const def = defOf(schema);
    switch (def.type) {
      case 'optional':
        return formOf(def.innerType);
      case 'object': {
        const fields = new Map(Object.entries(def.shape).map(([key, field]) => [key, formOf(field)]));
        const tables = [...fields].flatMap(([key, field]) =>
          field.is === 'text' && field.table !== undefined ? [[key, field.table] as const] : [],
        );
        const must = Object.entries(def.shape).flatMap(([key, field]) =>
          defOf(field).type === 'optional' ? [] : [key],
        );
        return {
          is: 'part',
          fields,
          must,
          orders: orderedFields.get(schema as z.ZodType)?.orders ?? [],
          tables,
        };
      }
      case 'array':
        return { is: 'list', of: formOf(def.element) };
      case 'tuple':
        return { is: 'row', of: def.items.map(formOf) };
      case 'union': {
        const by = (def as z.core.$ZodDiscriminatedUnionDef).discriminator;
        if (by !== undefined) return choiceOf(by, def.options, formOf);
        const either = def.options.map(formOf);
        const words = either.flatMap((form) => (form.is === 'word' ? form.words : []));
        return words.length > 0 && either.every((form) => form.is === 'word')
          ? { is: 'word', words }
          : { is: 'either', of: either };
      }
      case 'string': {
        const tag = tagFields.get(schema as z.ZodString);
        const table = tabledFields.get(schema as z.ZodString);
        const unit = unitFields.get(schema as z.ZodString);
        return {
          is: 'text',
          ...unit,
          ...(tag === undefined ? {} : { tag }),
          ...(table === undefined ? {} : { table }),
        };
      }
      case 'enum':
        return { is: 'word', words: Object.values(def.entries) };
      case 'literal':
        return {
          is: 'word',
          words: def.values.filter((v) => typeof v === 'string' || typeof v === 'number'),
        };
      case 'number':
        return numberOf(schema);
      case 'boolean':
        return { is: 'claim' };
      default:
        throw new Error(`the book's schema uses ${def.type}, which its form does not know`);
    }
  };
  const formOf = (schema: Schema): Form => {
    const before = known.get(schema);
    if (before !== undefined) return before;
    const form = made(schema);
    known.set(schema, form);
    return form;
  };
  return formOf;
};

/** The form of the whole book. */
export const bookForm: Form = formOfEach()(bookSchema);

/** The forms that data at a place may have, one where the data tell which. */
export const formFor = (form: Form, value: unknown): Form | undefined => {
  if (form.is === 'choice') {
    const word =
      typeof value === 'object' && value !== null ? (value as Record<string, unknown>)[form.by] : undefined;
    return (typeof word === 'string' ? form.options.get(word) : undefined) ?? form.otherwise;
  }
  if (form.is === 'either') {
    const wanted = Array.isArray(value) ? 'list' : typeof value === 'string' ? 'word' : undefined;
    return form.of.find((each) => each.is === wanted);
  }
  return form;
};
