import './no-code-from-text.ts';
import * as z from 'zod';
import type { Kind } from '../../quantity/kinds.ts';

/** Hard bounds of a quantity in the SI unit of its kind; a value outside them cannot be meant. */
export interface Bounds {
  /** The value must be this or more. */
  readonly least?: number;
  /** The value must be more than this. */
  readonly above?: number;
  /** The value must be this or less. */
  readonly most?: number;
}

/** What a quantity field carries besides its shape: its kind, and the bounds that physics sets. */
export interface QuantityMeta extends Bounds {
  readonly kind: Kind;
}

export const quantityFields = z.registry<QuantityMeta>();

const standing = z
  .enum(['measured', 'stated', 'assumed'])
  .describe('How the value is known: measured, stated by someone, or assumed. Absent: stated.');

const written = z
  .union([
    z.string().max(200),
    z.strictObject({
      value: z
        .union([z.string().max(200), z.tuple([z.string().max(200), z.string().max(200)])])
        .describe('Number and unit as text, or the two ends of a range.'),
      spread: z
        .string()
        .max(200)
        .exactOptional()
        .describe('Half width that holds the truth with 95 %, in the unit of the value or its own.'),
      standing: standing.exactOptional(),
      by: z.string().max(500).exactOptional().describe('Who measured or stated it.'),
      on: z.string().max(40).exactOptional().describe('The day, ISO 8601.'),
    }),
  ])
  .meta({
    id: 'quantity',
    description: 'A quantity as it was written: text with a unit, or that text with its standing.',
  });

/** A quantity as the book keeps it: exactly as it was written. */
export type Quantity = z.infer<typeof written>;

/**
 * A field that holds a quantity of one kind. The schema checks only the shape; the text is read by the walk
 * over the whole book, so that one bad unit hides no other error.
 */
export const quantity = (kind: Kind, description: string, bounds: Bounds = {}): typeof written => {
  const field = written.describe(description);
  quantityFields.add(field, { kind, ...bounds });
  return field;
};

/** A quantity that may not be negative. */
export const least0 = { least: 0 } as const;
/** A quantity that must be greater than nothing. */
export const above0 = { above: 0 } as const;
/** A share between none and all. */
export const share = { least: 0, most: 1 } as const;
