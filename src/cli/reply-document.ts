import * as z from 'zod';
import type { HeardReply } from '../proof/replies.ts';
import { given } from './given.ts';
import { headSchema } from './verify-document.ts';

const text = z.string();

/** What a witness says, wherever it is told. */
const said = {
  by: text,
  role: text,
  at: text.describe('The witness’s own clock'),
  accepted: z.enum(['as it is', 'with open points', 'not']),
  passes: text.optional().describe('The gate that it is for'),
  floor: text.optional(),
  open: z.array(text).describe('Points that stay open'),
  comments: z.array(z.strictObject({ check: text, floor: text, text })),
  remark: text.optional(),
  key: text.describe('Public key, Ed25519'),
};

export const heardReplySchema = z.strictObject({
  record: text.describe('Id of its record'),
  ...said,
  since: z.number().int().describe('Records that came after what was shown'),
});

/** A reply among the records. */
export const heardReplyDocument = ({
  record,
  reply: { by, role, at, accepted, passes, floor, open, comments, remark, key },
  since,
}: HeardReply): z.infer<typeof heardReplySchema> => ({
  record,
  by,
  role,
  at,
  accepted,
  open: [...open],
  comments: comments.map((comment) => ({ ...comment })),
  key,
  since,
  ...given({ passes, floor, remark }),
});

export const replySchema = z
  .strictObject({
    document: z.literal('twinfloor reply'),
    version: z.literal(1),
    path: text,
    ...said,
    book: text,
    revision: z.number().int(),
    file: text.describe('SHA-256 of what the file showed'),
    heads: z.array(headSchema).describe('How far the records reached that were shown'),
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
