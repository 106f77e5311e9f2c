import * as z from 'zod';
import type { Remedy } from '../floor/assessment.ts';
import { kinds } from '../quantity/kinds.ts';

const number = z.number();

export const remedySchema = z.strictObject({
  floor: z.string(),
  finding: z.string(),
  lever: z.string(),
  path: z.string().describe('The place in the book that the lever turns; the first of several'),
  patch: z
    .array(z.strictObject({ path: z.string(), value: z.unknown() }))
    .describe('Empty where nothing carries'),
  changes: z
    .array(
      z.strictObject({
        lever: z.string(),
        path: z.string(),
        kind: z.string(),
        unit: z.string(),
        value: number,
        text: z.string(),
      }),
    )
    .describe('One change a lever; two where no lever carries alone; empty where nothing carries'),
  breaks: z
    .array(
      z.strictObject({
        floor: z.string(),
        finding: z.string(),
        verdict: z.string(),
        margin: number.optional(),
      }),
    )
    .describe('Findings that carried and no longer would'),
  nextSmaller: z
    .strictObject({ text: z.string(), margin: number.optional() })
    .optional()
    .describe('What the next smaller candidate still gives, and by how much it misses'),
  margin: number.optional(),
});

export const remedyDocument = ({
  changes,
  patch,
  nextSmaller,
  breaks,
  ...remedy
}: Remedy): z.infer<typeof remedySchema> => ({
  ...remedy,
  patch: patch.map((one) => ({ ...one })),
  changes: changes.map((change) => ({ ...change, unit: kinds[change.kind] })),
  breaks: breaks.map((harm) => ({ ...harm })),
  ...(nextSmaller === undefined ? {} : { nextSmaller: { ...nextSmaller } }),
});
