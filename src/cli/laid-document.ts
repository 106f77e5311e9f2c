import * as z from 'zod';
import type { Book } from '../book/index.ts';
import type { LaidOver } from './laid-over.ts';
import { laidLine } from './reading-text.ts';
import {
  readingDocument,
  readingSchema,
  refusedDocument,
  refusedSchema,
  refusedText,
} from './refused-readings.ts';
import { words } from './words.ts';

export const laidSchema = z
  .strictObject({
    readings: z
      .array(z.strictObject({ path: z.string().describe('Place in the book'), reading: readingSchema }))
      .optional()
      .describe('Present with --readings: what stands in the place of what was promised'),
    leftOut: refusedSchema.optional(),
    temporarySupply: z.array(z.string()).optional().describe('Floors that stand on their temporary supply'),
  })
  .optional()
  .describe('What it runs on where that is not what was promised');

/** Member of a document that says what an assessment runs on; nothing where it is what was promised. */
export const laidDocument = ({ found, temporary }: LaidOver): { readonly on?: z.infer<typeof laidSchema> } =>
  found === undefined && temporary === undefined
    ? {}
    : {
        on: {
          ...(found === undefined
            ? {}
            : {
                readings: found.laid.map(({ path, reading }) => ({
                  path,
                  reading: readingDocument(reading),
                })),
                leftOut: refusedDocument(found.refused),
              }),
          ...(temporary === undefined ? {} : { temporarySupply: [...temporary] }),
        },
      };

/** The same in words, to stand above an assessment. */
export const laidText = (book: Book, { found, temporary }: LaidOver): string => {
  const names = (temporary ?? []).map(
    (tag) => (book.floors ?? []).find((floor) => floor.tag === tag)?.name ?? tag,
  );
  const parts = [
    ...(found === undefined
      ? []
      : [
          [
            words.say('found.on', { n: found.laid.length }),
            ...found.laid.map((laid) => `  ${laidLine(book, laid)}`),
          ].join('\n'),
          ...refusedText(book, found.refused),
        ]),
    ...(temporary === undefined ? [] : [words.say('found.temporary', { floors: names.join(', ') })]),
  ];
  return parts.length === 0 ? '' : `${parts.join('\n\n')}\n\n`;
};
