import type { Problem } from '../quantity/problem.ts';
import type { Field, Note } from '../sheets/frame.ts';
import type { SheetText } from '../sheets/sheet-text.ts';
import { makeCatalogue } from '../text/index.ts';
import { problemSentence } from '../text/problem-sentence.ts';
import { sentenceOf } from './sentence.ts';

/** The sentence of a note, from the words of its sheet. */
export const noteSentence = (text: SheetText, note: Note): string =>
  makeCatalogue([{ en: text.en.notes }]).say(note.code, note.parts ?? {});

/** The sentence of a problem that the sheet itself finds between its inputs; others have theirs in the catalogue. */
export const sheetSentence = (text: SheetText, problem: Problem): string => {
  const own = makeCatalogue([{ en: text.en.problems ?? {} }]);
  return own.has(problem.code) ? problemSentence(own, problem) : sentenceOf(problem);
};

/** Name of an input or output, and its symbol as it stands in the formula. */
export const fieldName = (name: string, words: Readonly<Record<string, string>>): string =>
  words[name] ?? name;

/** TeX made readable in a terminal: Greek letters by name, no backslashes. */
export const plainSymbol = (field: Field): string =>
  field.symbol
    .replace(/\\(?:mathrm|text|operatorname|mathit)\{([^{}]*)\}/g, '$1')
    .replace(/\\([A-Za-z]+)\s*/g, '$1')
    .replace(/[{}]/g, '')
    .trim();
