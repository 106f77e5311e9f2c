import type { Typesetter } from './frame/typst-compiler.ts';
import type { PaperOptions } from './paper-head.ts';
import type { PaperWords } from './paper-words.ts';
import preparation from './preparation/preparation.typ?raw';
import { type Preparation, preparationContent } from './preparation/preparation-content.ts';
import { type PaperSource, setPaper } from './set-paper.ts';

/** The preparation sheet of one floor. */
export const preparationPaper = (
  asked: Preparation,
  options: PaperOptions,
  paper: PaperWords,
): PaperSource => ({
  template: preparation,
  content: preparationContent(asked, options, paper),
});

export const printPreparation = (
  asked: Preparation,
  options: PaperOptions,
  paper: PaperWords,
  typesetter: Typesetter,
): Uint8Array => setPaper(preparationPaper(asked, options, paper), typesetter);
