import './no-code-from-text.ts';
import * as z from 'zod';
import type { Kind } from '../../quantity/kinds.ts';

type Shape = Record<string, z.ZodType>;
type Optional<O extends Shape> = { [K in keyof O]: z.ZodExactOptional<O[K]> };

/** Two fields of one part, of which the first must be less than, or at most, the second. */
export type Order<K extends string = string> = readonly [K, '<' | '<=', K];

export const orderedFields = z.registry<{ readonly orders: readonly Order[] }>();

/**
 * One part of the book: what must be there, and what may not be known yet. A key that is in neither is an error.
 */
export const part = <R extends Shape, O extends Shape>(
  description: string,
  must: R,
  may: O,
  orders: readonly Order<keyof (R & O) & string>[] = [],
): z.ZodObject<R & Optional<O>, z.core.$strict> => {
  const optional = Object.fromEntries(
    Object.entries(may).map(([key, field]) => [key, z.exactOptional(field)]),
  );
  const made = z.strictObject({ ...must, ...optional }).describe(description);
  if (orders.length > 0) orderedFields.add(made, { orders });
  return made as unknown as z.ZodObject<R & Optional<O>, z.core.$strict>;
};

/** A text that names a row of a table of ours, unless another field of the part stands in for the table. */
export const tabledFields = z.registry<{ readonly rows: readonly string[]; readonly unless: string }>();

/** A name out of a table; any other name needs the field that stands in for the table. */
export const tabled = (rows: readonly string[], unless: string, description: string): z.ZodString => {
  const field = z
    .string()
    .max(200)
    .describe(`${description} Known: ${rows.join('; ')}. Any other needs ${unless}.`);
  tabledFields.add(field, { rows, unless });
  return field;
};

/** A text that is a unit of a kind. */
export const unitFields = z.registry<{ readonly unitOf: Kind }>();

/** The unit in which quantities of a kind are shown. */
export const unitOf = (kind: Kind, description: string): z.ZodString => {
  const field = z.string().max(40).describe(description);
  unitFields.add(field, { unitOf: kind });
  return field;
};

/** A text for people. */
export const words = (description: string): z.ZodString => z.string().max(4000).describe(description);

/** A whole number of things. */
export const whole = (description: string, least = 0): z.ZodInt =>
  z.int().min(least).max(1_000_000_000).describe(description);

/** A plain number without a unit. */
export const plain = (description: string, least: number, most: number): z.ZodNumber =>
  z.number().min(least).max(most).describe(description);

/** Yes or no. */
export const claim = (description: string): z.ZodBoolean => z.boolean().describe(description);

/** One of a few words. */
export const oneOf = <const T extends readonly [string, ...string[]]>(values: T, description: string) =>
  z.enum(values).describe(description);

/** Several of one sort, in order. */
export const list = <T extends z.ZodType>(of: T, description: string): z.ZodArray<T> =>
  z.array(of).describe(description);

export const name = words('Name, as people on the floor say it.');
export const note = words('Whatever else should be known about it.');
export const day = z.string().max(40).describe('A day, ISO 8601 (2027-03-08).');
