import type { Remedy, RemedyChange } from '../floor/assessment.ts';
import { formatQuantity, handwritten, type Kind, si } from '../quantity/index.ts';
import { readEntry } from '../quantity/read-entry.ts';
import { asWritten } from './as-written.ts';
import type { PaperWords } from './paper-words.ts';

/** Kinds that people say as they are made or counted, in whatever units they read the rest. */
export const asMade: readonly Kind[] = ['count', 'ratio', 'conductorArea', 'acidity'];

/** A name that only sounds like a size: a pipe of 1 1/2 in has another bore. */
const isNominal = (value: number, said: number): boolean => Math.abs(said - value) > 1e-3 * Math.abs(value);

/** The quantity that a text of the book says, where it says one. */
const saidIn = (text: string, kind: Kind): { readonly value: number; readonly unit: string } | undefined => {
  const read = asMade.includes(kind) ? undefined : readEntry(text, kind, { path: '' });
  return read?.ok ? { value: read.value.value, unit: read.value.unit } : undefined;
};

/** A value in the reader's unit, with what would stand in the book behind it where that is another. */
const both = (value: number, kind: Kind, text: string, unit: string, paper: PaperWords): string => {
  const printed = paper.quantity(value, kind, 4);
  const inBook = formatQuantity(si(kind, value), kind, { locale: paper.locale, unit });
  return printed.unit === inBook.unit
    ? asWritten(text, paper)
    : paper.say('paper.answer.both', { printed: printed.text, text: asWritten(text, paper) });
};

/** What a lever is turned to, in the units of the reader. */
export const answerText = ({ kind, value, text }: RemedyChange, paper: PaperWords): string => {
  const said = saidIn(text, kind);
  return said === undefined ? handwritten(text) : both(value, kind, text, said.unit, paper);
};

/** The same of the step before, which has its text alone. */
export const smallerText = ({ changes, nextSmaller }: Remedy, paper: PaperWords): string => {
  const text = nextSmaller?.text ?? '';
  const [change] = changes;
  if (change === undefined) return handwritten(text);
  const now = saidIn(change.text, change.kind);
  const before = saidIn(text, change.kind);
  return now === undefined || before === undefined || isNominal(change.value, now.value)
    ? handwritten(text)
    : both(before.value, change.kind, text, before.unit, paper);
};
