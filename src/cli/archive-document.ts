import * as z from 'zod';
import type { RevisionMark } from '../book/by-revision.ts';
import { problemSchema } from './problem-document.ts';

const count = z.number().int();

export const revisionMarkSchema = z.strictObject({
  number: count,
  sha256: z.string().describe('SHA-256 of its text'),
  author: z.string(),
  reason: z.string().optional(),
  savedAt: z.string(),
});

/** What tells a revision from others, without the text that it was made from. */
export const revisionMarkDocument = ({
  number,
  sha256,
  author,
  reason,
  savedAt,
}: RevisionMark): z.infer<typeof revisionMarkSchema> => ({
  number,
  sha256,
  author,
  ...(reason === undefined ? {} : { reason }),
  savedAt,
});

export const archivedSchema = z
  .strictObject({
    document: z.literal('twinfloor archive'),
    version: z.literal(1),
    path: z.string(),
    book: z.string(),
    out: z
      .strictObject({
        sha256: z.string().describe('SHA-256 of the manifest, which fixes everything in the archive'),
        bytes: count,
        revisions: count,
        records: count,
        media: count,
      })
      .optional(),
    aside: z
      .array(
        revisionMarkSchema.extend({
          said: z
            .array(z.strictObject({ holds: z.boolean(), by: z.string(), at: z.string(), why: z.string() }))
            .describe('What people said of it and of the one that stands under its number'),
        }),
      )
      .describe('Kept aside in the store: people say which holds'),
    in: z
      .strictObject({
        revisions: z.strictObject({ added: count, aside: count, known: count }),
        records: z.strictObject({ added: count, known: count }),
        media: z.strictObject({ added: count, known: count }),
        told: z
          .array(problemSchema)
          .describe('What a person should look at; the rest was taken all the same'),
      })
      .optional(),
  })
  .describe('Answer of `twinfloor archive --json`');

export type Archived = z.infer<typeof archivedSchema>;
