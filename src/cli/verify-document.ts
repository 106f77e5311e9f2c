import * as z from 'zod';
import type { RevisionMark } from '../book/by-revision.ts';
import type { Head } from '../record/envelope.ts';
import type { RecordFile } from '../record/record-file.ts';
import { isSignature } from '../record/signature.ts';
import { revisionMarkDocument, revisionMarkSchema } from './archive-document.ts';
import { problemSchema } from './problem-document.ts';

export const headSchema = z.strictObject({
  book: z.string(),
  writer: z.string().describe('The device that wrote the chain'),
  sequence: z.number().int().describe('Place of its last record, from 0'),
  hash: z.string().describe('SHA-256 of that record'),
});

export const verificationSchema = z
  .strictObject({
    document: z.literal('twinfloor verification'),
    version: z.literal(1),
    path: z.string(),
    whole: z
      .boolean()
      .describe('Nothing was found broken; what no head or copy covers may still have been cut off'),
    book: z.string(),
    records: z.number().int(),
    heads: z.array(headSchema).describe('The last record of each writer’s chain'),
    heldAgainst: z.number().int().describe('Heads that came by another way'),
    signatures: z.array(
      z.strictObject({
        record: z.string().describe('Id of its record'),
        by: z.string(),
        role: z.string(),
        statement: z.string(),
        passes: z.string().optional(),
        floor: z.string().optional(),
        open: z.array(z.string()).describe('Points that stay open'),
        key: z.string().describe('Public key, Ed25519'),
        right: z.boolean().describe('Made over what it stands under, with a key that was expected'),
      }),
    ),
    problems: z.array(problemSchema),
    apart: z
      .array(revisionMarkSchema)
      .optional()
      .describe('Of an archive: revisions that stand beside others of their number, or follow none'),
  })
  .describe('Answer of `twinfloor verify RECORDS --json`');

export type Verification = z.infer<typeof verificationSchema>;

/** What was looked at, whole or not. */
export const verificationDocument = (
  path: string,
  { book, heads, records }: RecordFile,
  against: readonly Head[],
  problems: Verification['problems'],
  apart?: readonly RevisionMark[],
): Verification => ({
  document: 'twinfloor verification',
  version: 1,
  path,
  whole: problems.length === 0,
  book,
  records: records.length,
  heads: heads.map((head) => ({ ...head })),
  heldAgainst: against.length,
  signatures: records.flatMap((record, i) => {
    if (!isSignature(record)) return [];
    const { by, role, statement, passes, floor, open = [], key } = record.body;
    const place = `/records/${i}/`;
    return {
      record: record.id,
      by,
      role,
      statement,
      ...(passes === undefined ? {} : { passes }),
      ...(floor === undefined ? {} : { floor }),
      open: [...open],
      key,
      right: !problems.some((problem) => problem.path.startsWith(place)),
    };
  }),
  problems,
  ...(apart === undefined ? {} : { apart: apart.map(revisionMarkDocument) }),
});
