import * as z from 'zod';
import { headSchema } from './verify-document.ts';

const text = z.string();

export const replySchema = z
  .strictObject({
    document: z.literal('twinfloor reply'),
    version: z.literal(1),
    path: text,
    by: text,
    role: text,
    at: text.describe('The witness’s own clock'),
    book: text,
    revision: z.number().int(),
    file: text.describe('SHA-256 of what the file showed'),
    heads: z.array(headSchema).describe('How far the records reached that were shown'),
    accepted: z.enum(['as it is', 'with open points', 'not']),
    passes: text.optional().describe('The gate that it is for'),
    floor: text.optional(),
    open: z.array(text).describe('Points that stay open'),
    comments: z.array(z.strictObject({ check: text, floor: text, text })),
    remark: text.optional(),
    key: text.describe('Public key, Ed25519'),
    fingerprint: text.describe('Digits of the key, to be compared by voice'),
    since: z
      .number()
      .int()
      .optional()
      .describe('Records that came after what was shown; absent without records'),
    toFile: z.boolean().optional().describe('Whether it answers the file that was given'),
    written: text.optional().describe('Records with the reply among them'),
  })
  .describe('Answer of `twinfloor reply REPLY [RECORDS] --json`: signed over what it says');

export type ReplyDocument = z.infer<typeof replySchema>;
