import * as z from 'zod';
import type { Computed, Values } from '../sheets/frame.ts';
import type { SheetEntry } from '../sheets/sheet-entry.ts';
import { noteSchema, valueDocument, valueSchema } from './quantity-document.ts';
import { noteSentence } from './sheet-words.ts';

export const sheetSchema = z
  .strictObject({
    document: z.literal('twinfloor sheet'),
    version: z.literal(1),
    sheet: z.string().describe('Discipline and name'),
    sheetVersion: z.number().int().describe('Raised when a coefficient, a formula or an assumption changes'),
    title: z.string(),
    inputs: z.record(z.string(), valueSchema),
    outputs: z.record(z.string(), valueSchema),
    notes: z.array(noteSchema).describe('What the reader must know: outside a limit, of doubtful validity'),
    formula: z.array(z.string()).describe('TeX, one line an equation'),
    sources: z.array(
      z.strictObject({
        title: z.string(),
        edition: z.string().optional(),
        place: z.string().optional(),
        mark: z.enum(['read', 'computed', 'memory', 'common practice']),
      }),
    ),
    cases: z.number().int().describe('Published or independent cases that hold this sheet; 0 is unverified'),
  })
  .describe('Answer of `twinfloor sheet NAME ... --json`: one calculation with its numbers, all SI');

export type SheetDocument = z.infer<typeof sheetSchema>;

export const sheetDocument = (
  { sheet, text, cases }: SheetEntry,
  given: Values,
  { outputs, notes, assumed }: Computed<Values>,
): SheetDocument => ({
  document: 'twinfloor sheet',
  version: 1,
  sheet: sheet.id,
  sheetVersion: sheet.version,
  title: text.en.title,
  inputs: Object.fromEntries(
    Object.entries(sheet.inputs).flatMap(([name, field]) => {
      const value = given[name] ?? (field.type === 'list' ? undefined : field.assumed);
      return value === undefined ? [] : [[name, valueDocument(value, field, assumed.includes(name))]];
    }),
  ),
  outputs: Object.fromEntries(
    Object.entries(sheet.outputs).flatMap(([name, field]) => {
      const value = outputs[name];
      return value === undefined ? [] : [[name, valueDocument(value, field)]];
    }),
  ),
  notes: notes.map((note) => ({
    code: note.code,
    ...(note.parts === undefined ? {} : { parts: { ...note.parts } }),
    text: noteSentence(text, note),
  })),
  formula: [...sheet.formula],
  sources: sheet.sources.map((source) => ({ ...source })),
  cases: cases.length,
});

export const sheetListSchema = z
  .strictObject({
    document: z.literal('twinfloor sheets'),
    version: z.literal(1),
    sheets: z.array(
      z.strictObject({
        sheet: z.string(),
        title: z.string(),
        inputs: z.array(z.string()),
        outputs: z.array(z.string()),
        cases: z.number().int(),
      }),
    ),
  })
  .describe('Answer of `twinfloor sheet --json`: every sheet by name');

export const sheetListDocument = (entries: readonly SheetEntry[]): z.infer<typeof sheetListSchema> => ({
  document: 'twinfloor sheets',
  version: 1,
  sheets: entries.map(({ sheet, text, cases }) => ({
    sheet: sheet.id,
    title: text.en.title,
    inputs: Object.keys(sheet.inputs),
    outputs: Object.keys(sheet.outputs),
    cases: cases.length,
  })),
});
