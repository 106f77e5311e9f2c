import * as z from 'zod';
import type { HeldLimit, JudgedResult } from '../proof/index.ts';
import { given } from './given.ts';
import { workingDocument, workingSchema } from './working-document.ts';

const text = z.string();
const texts = z.array(text);

export const resultSchema = z.strictObject({
  record: text.describe('Id of its record'),
  at: text,
  by: text,
  verdict: z.enum(['proved', 'shown', 'failed', 'concession', 'waits']),
  seen: z.boolean().optional(),
  readings: texts.describe('As typed'),
  limits: z.array(
    z.strictObject({
      value: z.number().optional().describe('The reading that counts, SI'),
      kept: z
        .boolean()
        .optional()
        .describe('Absent: the limit is not known, or the spread lies on both sides'),
      margin: z.number().optional().describe('Share of the limit, positive is good'),
      working: workingSchema.optional().describe('The sheet that made one figure of all readings'),
    }),
  ),
  conditions: z.array(
    z.strictObject({ condition: text, read: text.optional(), held: z.boolean().optional() }),
  ),
  shortfalls: texts.describe('Why it is not proved'),
  witness: text.optional(),
  instrument: text.optional(),
  evidence: texts,
  concession: z.strictObject({ why: text, until: text, by: text }).optional(),
  late: z.strictObject({ what: text, who: text, due: text }).optional(),
  remark: text.optional(),
});

const heldDocument = ({ value, kept, margin, working }: HeldLimit) =>
  given({ value, kept, margin, working: working === undefined ? undefined : workingDocument(working) });

/** One try of a check, as it was typed and what it came to. */
export const resultDocument = ({
  result,
  verdict,
  limits,
  conditions,
  ownConditions,
  shortfalls,
}: JudgedResult): z.infer<typeof resultSchema> => {
  const {
    id,
    at,
    by,
    seen,
    readings = [],
    witness,
    instrument,
    evidence = [],
    concession,
    late,
    remark,
  } = result;
  return {
    record: id,
    at,
    by,
    verdict,
    readings: [...readings],
    limits: limits.map(heldDocument),
    conditions: [
      ...conditions.map(({ condition, read, held }) => ({
        condition: condition.id,
        ...given({ read, held }),
      })),
      ...ownConditions.map(({ text: condition, held }) => ({ condition, ...given({ held }) })),
    ],
    shortfalls: [...shortfalls],
    evidence: [...evidence],
    ...given({ seen, witness, instrument, concession, late, remark }),
  };
};
