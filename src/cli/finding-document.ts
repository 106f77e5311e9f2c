import * as z from 'zod';
import type { Figure, Finding } from '../floor/assessment.ts';
import { kinds } from '../quantity/kinds.ts';
import { noteDocument } from './note-document.ts';
import { noteSchema } from './quantity-document.ts';

const number = z.number();
const paths = z.array(z.string());

export const figureSchema = z
  .strictObject({
    id: z.string(),
    kind: z.string().describe('Kind of quantity'),
    unit: z.string().describe('SI unit of value, low and high'),
    value: number.optional().describe('Absent is unknown'),
    low: number.optional().describe('Lower end of the 95 % interval'),
    high: number.optional().describe('Upper end of the 95 % interval'),
    working: z.number().int().optional().describe('Index into the workings of the floor'),
    output: z.string().optional().describe('Which output of that working'),
    path: z.string().optional().describe('Where it stands in the book, for a figure that is said there'),
    assumed: paths.describe('Places in the book that were absent and for which a default was taken'),
    missing: paths.describe('Places in the book whose absence makes the figure unknown'),
  })
  .describe('One number of one floor');

export const findingSchema = z.strictObject({
  id: z.string(),
  verdict: z.enum(['carries', 'short', 'unknown']),
  sense: z.enum(['least', 'most']).describe('least: have must reach demand; most: have must stay under it'),
  demand: figureSchema,
  have: figureSchema,
  margin: number.optional().describe('Share of the demand, positive is good'),
  decides: z.string().optional().describe('The place in the book whose answer would decide an unknown'),
  ifSaid: z
    .boolean()
    .describe('Rests on values that were stated without a width: holds if what they said holds'),
  causes: z
    .array(
      z.strictObject({
        path: z.string(),
        doubt: z.enum(['given', 'stated', 'assumed']),
        share: number.describe('Share of the width that would go if this value were sure'),
      }),
    )
    .describe('What makes the width of the answer, most first'),
  levers: z.array(z.string()),
  notes: z.array(noteSchema),
});

export const figureDocument = (figure: Figure): z.infer<typeof figureSchema> => ({
  ...figure,
  unit: kinds[figure.kind],
  assumed: [...figure.assumed],
  missing: [...figure.missing],
});

export const findingDocument = (finding: Finding): z.infer<typeof findingSchema> => {
  const { id, verdict, sense, demand, have, margin, decides, ifSaid, causes, levers, notes } = finding;
  return {
    id,
    verdict,
    sense,
    demand: figureDocument(demand),
    have: figureDocument(have),
    ifSaid,
    causes: causes.map((cause) => ({ ...cause })),
    levers: [...levers],
    notes: notes.map((note) => noteDocument(note)),
    ...(margin === undefined ? {} : { margin }),
    ...(decides === undefined ? {} : { decides }),
  };
};
