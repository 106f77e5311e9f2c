import * as z from 'zod';
import type { Working } from '../floor/assessment.ts';
import type { Field } from '../sheets/frame.ts';
import { entryOf, noteDocument } from './note-document.ts';
import { noteSchema, valueDocument, valueSchema } from './quantity-document.ts';

const originSchema = z.union([
  z.strictObject({ path: z.string(), assumed: z.boolean().optional() }),
  z.strictObject({ working: z.number().int(), output: z.string() }),
  z
    .strictObject({ solved: z.enum(['balance', 'row', 'hour', 'loop']) })
    .describe('Found together with others by iteration'),
]);

export const workingSchema = z.strictObject({
  sheet: z.string(),
  version: z.number().int(),
  inputs: z.record(z.string(), valueSchema),
  outputs: z.record(z.string(), valueSchema),
  notes: z.array(noteSchema),
  from: z.record(z.string(), originSchema).describe('Where each input came from'),
  residual: z.number().optional().describe('What is left over where the answer was found by iteration, SI'),
});

const valuesDocument = (values: Working['inputs'], fields: Readonly<Record<string, Field>>) =>
  Object.fromEntries(
    Object.entries(values).flatMap(([name, value]) => {
      const field = fields[name];
      return field === undefined ? [] : [[name, valueDocument(value, field)]];
    }),
  );

export const workingDocument = (working: Working): z.infer<typeof workingSchema> => {
  const { sheet, version, inputs, outputs, notes, from, residual } = working;
  const fields = entryOf(sheet)?.sheet;
  return {
    sheet,
    version,
    inputs: valuesDocument(inputs, fields?.inputs ?? {}),
    outputs: valuesDocument(outputs, fields?.outputs ?? {}),
    notes: notes.map((note) => noteDocument(note, sheet)),
    from: Object.fromEntries(Object.entries(from).map(([name, origin]) => [name, { ...origin }])),
    ...(residual === undefined ? {} : { residual }),
  };
};
