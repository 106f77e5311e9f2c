import * as z from 'zod';
import type { Within } from '../fill/index.ts';
import { type Kind, kinds } from '../quantity/kinds.ts';

export const withinSchema = z
  .strictObject({
    value: z.number(),
    lower: z.number(),
    upper: z.number(),
    confidence: z.number().describe('With which the truth lies between lower and upper'),
    unit: z.string().describe('Unit of the three, always SI'),
    deviation: z.number().describe('Standard uncertainty, same unit'),
    freedom: z
      .number()
      .optional()
      .describe('Degrees of freedom behind the deviation; absent: as many as one likes'),
  })
  .describe('A figure with its interval');

export const withinDocument = (
  { value, lower, upper, confidence, deviation, dof }: Within,
  kind: Kind,
): z.infer<typeof withinSchema> => ({
  value,
  lower,
  upper,
  confidence,
  unit: kinds[kind],
  deviation,
  ...(Number.isFinite(dof) ? { freedom: dof } : {}),
});
