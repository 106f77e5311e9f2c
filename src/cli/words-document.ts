import * as z from 'zod';

export const wordsSchema = z
  .strictObject({
    document: z.literal('twinfloor words'),
    version: z.literal(1),
    path: z.string().describe('The file that was written'),
    bytes: z.number().int(),
    texts: z.number().int().describe('English texts in it'),
    held: z.number().int().describe('Of them, those that are held here in the language that was asked for'),
    language: z.string().optional(),
    paper: z.string().optional(),
  })
  .describe('Answer of `twinfloor words --json`: the sheet of words that was written');
