import * as z from 'zod';
import type { Book } from '../book/index.ts';
import { placeText } from '../book/place-text.ts';
import type { BookAsFound, FoundReading } from '../floor/found/index.ts';
import { problemDocument, problemSchema } from './problem-document.ts';
import { typedText } from './reading-text.ts';
import { sentenceOf } from './sentence.ts';
import { words } from './words.ts';

export const readingSchema = z
  .strictObject({
    floor: z.string(),
    of: z.string().describe('Place within the floor'),
    value: z.string().describe('As it was typed'),
    spread: z.string().optional().describe('Half width that holds the truth with 95 %'),
    by: z.string(),
    at: z.string().describe('Moment, ISO 8601'),
    instrument: z.string().optional(),
    users: z.number().int().optional().describe('How many others were drawing'),
    conditions: z.string().optional(),
  })
  .describe('Something that was read');

export const refusedSchema = z
  .array(z.strictObject({ reading: readingSchema, problems: z.array(problemSchema) }))
  .describe('Readings that fit nowhere: they are left out and the rest stands');

export const readingDocument = (reading: FoundReading): z.infer<typeof readingSchema> => {
  const { floor, of, value, spread, by, at, instrument, users, conditions } = reading;
  return {
    floor,
    of,
    value,
    by,
    at,
    ...(spread === undefined ? {} : { spread }),
    ...(instrument === undefined ? {} : { instrument }),
    ...(users === undefined ? {} : { users }),
    ...(conditions === undefined ? {} : { conditions }),
  };
};

type Refused = BookAsFound['refused'];

export const refusedDocument = (refused: Refused): z.infer<typeof refusedSchema> =>
  refused.map(({ reading, problems }) => ({
    reading: readingDocument(reading),
    problems: problems.map((problem) => problemDocument(problem)),
  }));

/** What was read and fits nowhere, each with why. */
export const refusedText = (book: Book, refused: Refused): readonly string[] => {
  if (refused.length === 0) return [];
  const lines = refused.flatMap(({ reading, problems }) => [
    words.say('found.refused.one', { floor: reading.floor, of: reading.of, value: typedText(reading) }),
    // the place is named as a person says it, where the book has it
    ...new Set(
      problems.map(
        (problem) =>
          `  ${sentenceOf(problem.path.startsWith('/') ? { ...problem, path: placeText(book, problem.path) } : problem)}`,
      ),
    ),
  ]);
  return [
    [words.say('found.refused', { n: refused.length }), ...lines.map((line) => `  ${line}`)].join('\n'),
  ];
};
