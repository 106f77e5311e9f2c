import type * as z from 'zod';
import type { Bundle } from '../text/index.ts';
import { bookSchema } from './schema/book.ts';
import { quantityFields } from './schema/quantity.ts';

type Schema = z.core.$ZodType;
const defOf = (schema: Schema) => (schema as unknown as z.core.$ZodTypes)._zod.def;

/** `freeAir` is said `free air` where nobody has given the field a better name. */
export const spaced = (key: string): string => key.replace(/([a-z])([A-Z])/g, '$1 $2').toLowerCase();

/**
 * What the schema of the book says of itself, as words of the catalogue: `field.KEY` a plain name for every
 * field, `word.WORD` every word that one may choose, `help./line/stations/-:washer/stroke` what belongs there.
 * A step of a list is `-`, and the kind that a thing was chosen to be stands behind a colon.
 */
export const schemaWords = (): Bundle => {
  const words: Record<string, string> = {};
  const described = (schema: Schema, at: string): void => {
    const text = (schema as z.ZodType).description;
    if (text !== undefined) words[`help.${at}`] ??= text.replace(/`([^`]+)`/g, '“$1”');
  };
  const choose = (values: readonly unknown[]): void => {
    for (const value of values) words[`word.${String(value)}`] = String(value);
  };
  const at = (schema: Schema, path: string): void => {
    described(schema, path);
    // the inside of a quantity is the same everywhere and has words of its own
    if (quantityFields.has(schema as z.ZodType as never)) return;
    const def = defOf(schema);
    if (def.type === 'optional') at(def.innerType, path);
    else if (def.type === 'array') at(def.element, `${path}/-`);
    else if (def.type === 'enum') choose(Object.values(def.entries));
    else if (def.type === 'literal') choose(def.values);
    else if (def.type === 'tuple') {
      for (const [index, item] of def.items.entries()) at(item, `${path}/${index}`);
    } else if (def.type === 'object') {
      for (const [key, field] of Object.entries(def.shape)) {
        words[`field.${key}`] = spaced(key);
        at(field, `${path}/${key}`);
      }
    } else if (def.type === 'union') {
      const by = (def as z.core.$ZodDiscriminatedUnionDef).discriminator;
      for (const option of def.options) {
        const inner = defOf(option);
        const kind = by === undefined || inner.type !== 'object' ? undefined : inner.shape[by];
        const named = kind === undefined ? undefined : defOf(kind);
        const word = named?.type === 'literal' ? String(named.values[0]) : undefined;
        at(option, word === undefined ? path : `${path}:${word}`);
      }
    }
  };
  at(bookSchema, '');
  return { en: words };
};
