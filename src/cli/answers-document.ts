import * as z from 'zod';
import type { AnswersRead, Reported } from '../floor/questions/index.ts';
import { problemDocument, problemSchema } from './problem-document.ts';
import { words } from './words.ts';

const reported = {
  row: z.number().int().describe('As the spreadsheet numbers it'),
  by: z.string().optional(),
  on: z.string().optional(),
  remark: z.string().optional(),
};
const place = z.string().describe('The place of the book that the row answers');

export const answersSchema = z
  .strictObject({
    document: z.literal('twinfloor answers'),
    version: z.literal(1),
    book: z.string(),
    sheet: z.string(),
    floor: z.string(),
    taken: z.array(
      z.strictObject({
        ...reported,
        path: place,
        value: z.string().describe('As it will stand in the book'),
        before: z.unknown().optional().describe('What stood there'),
        notes: z.array(z.strictObject({ code: z.string(), text: z.string() })),
      }),
    ),
    notUnderstood: z.array(
      z.strictObject({
        ...reported,
        path: place.optional(),
        given: z.string(),
        problems: z.array(problemSchema),
      }),
    ),
    empty: z.array(z.strictObject({ ...reported, path: place.optional(), given: z.string().optional() })),
    missing: z.array(z.string()).describe('Places that are asked and have no row any more'),
    patch: z
      .array(z.strictObject({ path: z.string(), value: z.unknown() }))
      .describe('All that was taken, as one change that the book accepts'),
    written: z.boolean().describe('Whether the file of the book was written anew'),
  })
  .describe('Answer of `twinfloor answers BOOK.json FILE --json`');

type Document = z.infer<typeof answersSchema>;

const said = ({ row, by, on, remark }: Reported) => ({
  row,
  ...(by === undefined ? {} : { by }),
  ...(on === undefined ? {} : { on }),
  ...(remark === undefined ? {} : { remark }),
});

export const answersDocument = (
  read: AnswersRead,
  about: Pick<Document, 'book' | 'sheet' | 'floor' | 'written'>,
): Document => ({
  document: 'twinfloor answers',
  version: 1,
  ...about,
  taken: read.taken.map((one) => ({
    ...said(one),
    path: one.path,
    value: one.value,
    ...(one.before === undefined ? {} : { before: one.before }),
    notes: one.notes.map((code) => ({ code, text: words.say(`questionSheet.note.${code}`) })),
  })),
  notUnderstood: read.notUnderstood.map((one) => ({
    ...said(one),
    given: one.given,
    problems: one.problems.map((problem) => problemDocument(problem)),
    ...(one.path === undefined ? {} : { path: one.path }),
  })),
  empty: read.empty.map((one) => ({
    ...said(one),
    ...(one.path === undefined ? {} : { path: one.path }),
    ...(one.given === undefined ? {} : { given: one.given }),
  })),
  missing: [...read.missing],
  patch: read.patch.map(({ path, value }) => ({ path, value })),
});
