import * as z from 'zod';
import type { Book } from '../book/index.ts';
import { utilities } from '../floor/utilities/utility-finding.ts';
import type { Asked, PutQuestion } from './asked-of-floor.ts';

const questionSchema = z.strictObject({
  path: z.string().describe('The place of the book where the answer will stand'),
  text: z.string().describe('The question as it is put'),
  who: z.enum(['site', 'builder']).describe('Who can answer'),
  why: z
    .enum(['missing', 'refused', 'unsure', 'assumed'])
    .describe('Nothing stands there, a sheet refuses it, it is not sure enough, or it was assumed'),
  takes: z
    .enum(['quantity', 'choice', 'claim', 'number', 'text', 'part'])
    .describe('What the answer is; a part wants several and has no row in a sheet'),
  kind: z.string().optional().describe('Kind of the quantity that is asked'),
  unit: z.string().optional().describe('Unit in which the answer is expected'),
  choices: z.array(z.string()).optional(),
  settles: z
    .number()
    .describe('Findings that the answer would settle, one that wants several answers parted among them'),
  share: z.number().describe('Greatest share of the width of an answer that an assumption makes, 0 to 1'),
  findings: z.array(z.string()).describe('Ids of the findings that wait for it, or that it widens'),
  figures: z.array(z.string()).describe('Ids of the figures that are not known without it'),
  utility: z.enum(utilities).optional(),
});

export const questionsSchema = z
  .strictObject({
    document: z.literal('twinfloor questions'),
    version: z.literal(1),
    title: z.string().optional(),
    floor: z.string(),
    name: z.string(),
    format: z.string(),
    questions: z.array(questionSchema).describe('Those first whose answer settles most'),
    written: z
      .strictObject({ path: z.string(), bytes: z.number().int(), questions: z.number().int() })
      .optional()
      .describe('The sheet that was written, present with --out'),
  })
  .describe('Answer of `twinfloor questions BOOK.json --json`');

type Document = z.infer<typeof questionsSchema>;

const questionDocument = (question: PutQuestion): Document['questions'][number] => {
  const { choices, findings, figures, ...rest } = question;
  return {
    ...rest,
    findings: [...findings],
    figures: [...figures],
    ...(choices === undefined ? {} : { choices: [...choices] }),
  };
};

export const questionsDocument = (
  book: Book,
  { floor, format, questions }: Asked,
  written: Document['written'],
): Document => ({
  document: 'twinfloor questions',
  version: 1,
  ...(book.about?.title === undefined ? {} : { title: book.about.title }),
  floor: floor.floor,
  name: floor.name,
  format,
  questions: questions.map(questionDocument),
  ...(written === undefined ? {} : { written }),
});
