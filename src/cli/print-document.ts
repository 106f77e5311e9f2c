import * as z from 'zod';
import { languages } from '../text/index.ts';

export const printedSchema = z
  .strictObject({
    document: z.literal('twinfloor paper'),
    version: z.literal(1),
    paper: z.string(),
    path: z.string().describe('The file that was written'),
    bytes: z.number().int(),
    sha256: z.string().describe('Of the file that was written'),
    bookSha256: z.string().describe('Of the text of the book, as it stands at the head of every page'),
    date: z.string().describe('Day that the paper carries'),
    language: z.enum(languages).describe('Language of the paper'),
    page: z.enum(['a4', 'letter']),
    floors: z.array(z.string()).describe('Tags of the floors on it'),
    title: z.string().optional(),
  })
  .describe('Answer of `twinfloor print BOOK.json --json`: what was written');
