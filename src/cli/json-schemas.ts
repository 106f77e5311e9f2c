import * as z from 'zod';
import { answersSchema } from './answers-document.ts';
import { archivedSchema } from './archive-document.ts';
import { assessmentSchema } from './assess-document.ts';
import { fillSchema } from './fill-schema.ts';
import { fillSheetSchema } from './fill-sheet.ts';
import { foundSchema } from './found-document.ts';
import { joinsSchema } from './joins-document.ts';
import { lotSchema } from './lot-document.ts';
import { openedSchema } from './open-document.ts';
import { printedSchema } from './print-document.ts';
import { problemsSchema } from './problem-document.ts';
import { proofSchema } from './proof-document.ts';
import { questionsSchema } from './questions-document.ts';
import { replySchema } from './reply-document.ts';
import { settingsSchema } from './settings-document.ts';
import { sheetListSchema, sheetSchema } from './sheet-document.ts';
import { shiftSchema } from './shift-document.ts';
import { utilitiesDocumentSchema } from './utilities-document.ts';
import { validationSchema } from './validate-document.ts';
import { verificationSchema } from './verify-document.ts';
import { witnessSchema } from './witness-document.ts';
import { wordsSchema } from './words-document.ts';

/** What the commands print with `--json`, by the name of the file in docs/schema. */
export const documents = {
  'answers-1': answersSchema,
  'assessment-1': assessmentSchema,
  'fill-1': fillSchema,
  'fill-sheet-1': fillSheetSchema,
  'found-1': foundSchema,
  'joins-1': joinsSchema,
  'lot-1': lotSchema,
  'open-1': openedSchema,
  'paper-1': printedSchema,
  'problems-1': problemsSchema,
  'proof-1': proofSchema,
  'questions-1': questionsSchema,
  'reply-1': replySchema,
  'settings-1': settingsSchema,
  'sheet-1': sheetSchema,
  'sheets-1': sheetListSchema,
  'shift-1': shiftSchema,
  'utilities-1': utilitiesDocumentSchema,
  'validation-1': validationSchema,
  'verification-1': verificationSchema,
  'archive-1': archivedSchema,
  'witness-1': witnessSchema,
  'words-1': wordsSchema,
} as const;

/** The published JSON Schema of one of them. */
export const documentJsonSchema = (name: keyof typeof documents): object =>
  z.toJSONSchema(documents[name], { target: 'draft-2020-12' });
