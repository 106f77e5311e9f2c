import * as z from 'zod';
import { type Book, valueAt } from '../book/index.ts';
import { placeText } from '../book/place-text.ts';
import type { BookAsFound, PromisedAndFound } from '../floor/found/index.ts';
import { kinds } from '../quantity/kinds.ts';
import { readingDocument, readingSchema, refusedDocument, refusedSchema } from './refused-readings.ts';
import { words } from './words.ts';

const number = z.number();
const verdict = z.enum(['carries', 'short', 'unknown']);
const range = { value: number.optional(), low: number.optional(), high: number.optional() };

export const foundSchema = z
  .strictObject({
    document: z.literal('twinfloor found'),
    version: z.literal(1),
    title: z.string().optional(),
    format: z.string(),
    places: z.array(
      z.strictObject({
        floor: z.string(),
        path: z.string().describe('Place in the book'),
        place: z.string().describe('The same in words'),
        kind: z.string().optional().describe('Kind of quantity; absent for a word or a plain number'),
        unit: z.string().optional().describe('SI unit of what was promised and found'),
        promised: z
          .strictObject({
            ...range,
            by: z.string().optional(),
            written: z.unknown().describe('As it stands'),
          })
          .optional()
          .describe('Absent where nothing was said'),
        found: z.strictObject(range).describe('Absent numbers: what was read is a word'),
        reading: readingSchema,
        differs: z.boolean().describe('The two widths do not meet'),
        rate: z
          .strictObject({ from: number.optional(), to: number.optional() })
          .describe('Running rate with this reading alone, bottles a second'),
        shifts: z
          .array(
            z.strictObject({
              finding: z.string(),
              name: z.string(),
              touches: z.enum(['rate', 'washing', 'margin']),
              from: verdict,
              to: verdict,
              marginFrom: number.optional().describe('Share of what is asked'),
              marginTo: number.optional(),
            }),
          )
          .describe('Findings that this reading moves on its own, those whose verdict turns first'),
        owner: z.enum(['builder', 'site']).describe('Whose it is'),
        who: z.string().optional(),
      }),
    ),
    leftOut: refusedSchema,
    caution: z.string(),
  })
  .describe('Answer of `twinfloor found BOOK.json READINGS.json --json`: every number SI');

export type FoundDocument = z.infer<typeof foundSchema>;

export interface FoundPlaces {
  readonly format: string;
  readonly places: readonly PromisedAndFound[];
  readonly refused: BookAsFound['refused'];
  /** Name of a finding of a floor. */
  readonly nameOf: (floor: string, finding: string) => string;
}

export const foundDocument = (
  book: Book,
  { format, places, refused, nameOf }: FoundPlaces,
): FoundDocument => ({
  document: 'twinfloor found',
  version: 1,
  ...(book.about?.title === undefined ? {} : { title: book.about.title }),
  format,
  places: places.map(
    ({ floor, path, kind, promised, found, reading, differs, rateFrom, rateTo, shifts, owner, who }) => ({
      floor,
      path,
      place: placeText(book, path),
      ...(kind === undefined ? {} : { kind, unit: kinds[kind] }),
      ...(promised === undefined ? {} : { promised: { ...promised, written: valueAt(book, path) } }),
      found: { ...found },
      reading: readingDocument(reading),
      differs,
      rate: {
        ...(rateFrom === undefined ? {} : { from: rateFrom }),
        ...(rateTo === undefined ? {} : { to: rateTo }),
      },
      shifts: shifts.map(({ id, ...shift }) => ({ finding: id, name: nameOf(floor, id), ...shift })),
      owner,
      ...(who === undefined ? {} : { who }),
    }),
  ),
  leftOut: refusedDocument(refused),
  caution: words.say('assess.caution'),
});
