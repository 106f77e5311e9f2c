import * as z from 'zod';
import type { RowsRead } from '../floor/fill/sheet/index.ts';
import { problemDocument, problemSchema } from './problem-document.ts';
import { sentenceOf } from './sentence.ts';
import { words } from './words.ts';

export const rowsSchema = z
  .strictObject({
    taken: z.array(z.number().int()).describe('Rows that were taken, as the spreadsheet numbers them'),
    notUnderstood: z.array(
      z.strictObject({ row: z.number().int(), given: z.string(), problems: z.array(problemSchema) }),
    ),
    empty: z.array(z.number().int()).describe('Rows that wait for a bottle'),
    unknown: z.array(z.string()).describe('Headings that name no column: nothing below them was taken'),
  })
  .describe('Row by row what the sheet held: a row is taken wholly or not at all');

export const rowsDocument = ({
  taken,
  notUnderstood,
  empty,
  unknown,
}: RowsRead<unknown>): z.infer<typeof rowsSchema> => ({
  taken: taken.map(({ row }) => row),
  notUnderstood: notUnderstood.map(({ row, given, problems }) => ({
    row,
    given,
    problems: problems.map((problem) => problemDocument(problem)),
  })),
  empty: [...empty],
  unknown: [...unknown],
});

/** What of a sheet was not taken, and why; nothing where all was. */
export const rowsText = (read: RowsRead<unknown> | undefined): readonly string[] => {
  if (read === undefined) return [];
  const { taken, notUnderstood, empty, unknown } = read;
  const byNumber = taken.filter(({ notes }) => notes.includes('laneByNumber')).length;
  const lines = [
    ...(notUnderstood.length === 0
      ? []
      : [
          words.say('fill.rows.not', { n: notUnderstood.length }),
          ...notUnderstood.flatMap(({ row, given, problems }) => [
            `  ${words.say('fill.rows.row', { row: String(row), given })}`,
            ...problems.map((problem) => `    ${sentenceOf(problem)}`),
          ]),
        ]),
    ...(unknown.length === 0 ? [] : [words.say('fill.rows.unknown', { headings: unknown.join(', ') })]),
    ...(empty.length === 0 ? [] : [words.say('fill.rows.empty', { n: empty.length })]),
    ...(byNumber === 0 ? [] : [words.say('fill.rows.byNumber', { n: byNumber })]),
  ];
  return lines.length === 0 ? [] : [lines.join('\n')];
};
