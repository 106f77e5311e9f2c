import * as z from 'zod';
import { kinds } from '../quantity/kinds.ts';
import { bookSchema } from './schema/book.ts';
import { quantityFields } from './schema/quantity.ts';
import { tagFields } from './schema/tag.ts';

/**
 * The published schema of a book. Beside what JSON Schema knows it says of each quantity its kind with the SI unit
 * and bounds (`x-quantity`), of each tag what it stands on (`x-names`) or refers to (`x-refersTo`).
 *
 * Source   JSON Schema, draft 2020-12
 */
export const bookJsonSchema = (): Record<string, unknown> => ({
  $schema: 'https://json-schema.org/draft/2020-12/schema',
  $id: 'book-1.json',
  title: 'Twinfloor book, version 1',
  ...z.toJSONSchema(bookSchema, {
    target: 'draft-2020-12',
    override: ({ zodSchema, jsonSchema }) => {
      const quantity = quantityFields.get(zodSchema as never);
      if (quantity !== undefined) jsonSchema['x-quantity'] = { ...quantity, unit: kinds[quantity.kind] };
      const tag = tagFields.get(zodSchema as never);
      if (tag !== undefined && 'names' in tag) jsonSchema['x-names'] = tag.names;
      if (tag !== undefined && 'refersTo' in tag) jsonSchema['x-refersTo'] = tag.refersTo;
    },
  }),
});
