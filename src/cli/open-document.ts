import * as z from 'zod';

export const openedSchema = z
  .strictObject({
    document: z.literal('twinfloor open'),
    version: z.literal(1),
    address: z.string().describe('Address of the pages'),
    kept: z.string().describe('Folder that keeps the books'),
  })
  .describe('Answer of `twinfloor open --json`, one line as soon as the pages can be opened');

export type OpenedDocument = z.infer<typeof openedSchema>;
