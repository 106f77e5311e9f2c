import type { Answers } from '../../book/index.ts';
import type { KeptNotes } from '../state/kept-notes.ts';

/** The short form as this browser keeps it until a book is made of it. */
export interface KeptAnswers {
  readonly answers: Answers;
  /** The book that it will be; sent twice it is still one book. */
  readonly id: string;
}

const name = 'first-book';
/** Answers that were put aside for a fresh form. */
const asideName = 'first-book-aside';

const isKept = (value: unknown): value is KeptAnswers =>
  typeof value === 'object' &&
  value !== null &&
  typeof (value as KeptAnswers).id === 'string' &&
  typeof (value as KeptAnswers).answers === 'object' &&
  (value as KeptAnswers).answers !== null &&
  Object.values((value as KeptAnswers).answers).every((answer) => typeof answer === 'string');

const readAs = (notes: KeptNotes, of: string): KeptAnswers | undefined => {
  const value = notes.read(of);
  return isKept(value) ? value : undefined;
};

/** Whether anything stands in it. */
export const isBegun = (kept: KeptAnswers | undefined): kept is KeptAnswers =>
  kept !== undefined && Object.values(kept.answers).some((answer) => answer.trim() !== '');

export const readAnswers = (notes: KeptNotes): KeptAnswers | undefined => readAs(notes, name);

export const readAside = (notes: KeptNotes): KeptAnswers | undefined => readAs(notes, asideName);

/** Keeps one answer; what another tab has written to the others meanwhile stays. */
export const keepAnswer = (notes: KeptNotes, id: string, question: string, text: string): KeptAnswers => {
  const before = readAnswers(notes);
  const kept = { id: before?.id ?? id, answers: { ...before?.answers, [question]: text } };
  notes.write(name, kept);
  return kept;
};

/** The book is made: the form is empty again. */
export const forgetAnswers = (notes: KeptNotes): void => notes.write(name, undefined);

/** Puts the answers aside for a fresh form; they can be taken back. */
export const putAside = (notes: KeptNotes): void => {
  notes.write(asideName, readAnswers(notes));
  notes.write(name, undefined);
};

/** Takes the answers back that were put aside. */
export const takeBack = (notes: KeptNotes): KeptAnswers | undefined => {
  const aside = readAside(notes);
  notes.write(name, aside);
  notes.write(asideName, undefined);
  return aside;
};

export const watchAnswers = (notes: KeptNotes, told: () => void): (() => void) => notes.watch(name, told);
