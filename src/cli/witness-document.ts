import * as z from 'zod';
import { headSchema } from './verify-document.ts';

export const witnessSchema = z
  .strictObject({
    document: z.literal('twinfloor witness file'),
    version: z.literal(1),
    path: z.string().describe('The file that was written'),
    bytes: z.number().int(),
    sha256: z.string().describe('Of the file that was written'),
    shows: z.string().describe('SHA-256 of what it shows, from <main> to </main>; a reply names it'),
    book: z.string(),
    bookSha256: z.string().describe('Of the text of the book'),
    revision: z.number().int(),
    date: z.string().describe('Day that the file carries'),
    records: z.number().int(),
    heads: z.array(headSchema),
    included: z.array(z.string()).describe('Pictures, films and sounds in it, by SHA-256'),
    leftOut: z.array(
      z.strictObject({ sha256: z.string(), why: z.enum(['large', 'absent', 'damaged', 'strange']) }),
    ),
  })
  .describe('Answer of `twinfloor witness BOOK.json RECORDS --json`: what was written');
