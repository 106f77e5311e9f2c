import type { Kind } from '../../quantity/kinds.ts';
import type { Patch } from '../patch-book.ts';

/** Where a first answer can be found. */
export type Whence = 'nameplate' | 'drawing' | 'telephone' | 'agreement';

/** What kind of answer a question takes. */
export type AnswerForm =
  | { readonly is: 'words' }
  | { readonly is: 'quantity'; readonly kind: Kind; readonly example: string }
  | { readonly is: 'count'; readonly least: number; readonly most: number; readonly example: string }
  | { readonly is: 'choice'; readonly options: readonly string[] };

/** Answers by question, as they were typed; a question that is not answered has none. */
export type Answers = Readonly<Record<string, string>>;

/** One question of the short form, answered from a nameplate, a drawing or one telephone call. */
export interface Question {
  readonly id: string;
  readonly whence: Whence;
  readonly form: AnswerForm;
  /** Questions that another answer makes pointless are not put. */
  readonly asked?: (answers: Answers) => boolean;
  /** What the answer puts into the book. */
  readonly put: (answer: string, answers: Answers) => readonly Patch[];
}

/** A value that the form takes because nobody has said one yet. */
export const assumed = (value: string): { readonly value: string; readonly standing: 'assumed' } => ({
  value,
  standing: 'assumed',
});
