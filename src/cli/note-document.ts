import type * as z from 'zod';
import type { Note } from '../sheets/frame.ts';
import { sheetEntries } from '../sheets/registry.ts';
import type { noteSchema } from './quantity-document.ts';
import { noteSentence } from './sheet-words.ts';
import { words } from './words.ts';

export const entryOf = (sheet: string) => sheetEntries.find((entry) => entry.sheet.id === sheet);

export const noteDocument = (note: Note, sheet?: string): z.infer<typeof noteSchema> => {
  const entry = sheet === undefined ? undefined : entryOf(sheet);
  return {
    code: note.code,
    ...(note.parts === undefined ? {} : { parts: { ...note.parts } }),
    text: entry === undefined ? words.say(note.code, note.parts) : noteSentence(entry.text, note),
  };
};
