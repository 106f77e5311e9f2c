import * as z from 'zod';

export const validationSchema = z
  .strictObject({
    document: z.literal('twinfloor validation'),
    version: z.literal(1),
    path: z.string(),
    valid: z.literal(true),
    bookVersion: z.number().int(),
    title: z.string().optional(),
    floors: z.array(z.string()).describe('Tags of the floors'),
  })
  .describe('Answer of `twinfloor validate BOOK.json --json` where the book reads; else see problems');
