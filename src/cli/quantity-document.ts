import * as z from 'zod';
import { kinds } from '../quantity/kinds.ts';
import type { Field, Value } from '../sheets/frame.ts';

const kindSchema = z.enum(Object.keys(kinds) as [keyof typeof kinds, ...(keyof typeof kinds)[]]);

/** A value in JSON: its kind and the SI unit in which the number stands; a choice has neither. */
export const valueSchema = z
  .union([
    z.strictObject({
      kind: kindSchema.describe('Kind of quantity; gauge and absolute pressure, for example, are two'),
      unit: z.string().describe('Unit of the number, always the SI unit of the kind'),
      value: z.union([z.number(), z.array(z.number())]),
      assumed: z.literal(true).optional().describe('Left out by the caller and taken from the default'),
    }),
    z.strictObject({ choice: z.string(), assumed: z.literal(true).optional() }),
  ])
  .describe('A number or several with kind and SI unit, or a choice');

export type ValueDocument = z.infer<typeof valueSchema>;

export const valueDocument = (value: Value, field: Field, assumed = false): ValueDocument => {
  const mark = assumed ? { assumed: true as const } : {};
  if (field.type === 'choice' || typeof value === 'string') return { choice: String(value), ...mark };
  return {
    kind: field.kind,
    unit: kinds[field.kind],
    value: typeof value === 'number' ? value : [...value],
    ...mark,
  };
};

export const noteSchema = z.strictObject({
  code: z.string(),
  parts: z.record(z.string(), z.union([z.string(), z.number()])).optional(),
  text: z.string().describe('The note as a sentence'),
});
