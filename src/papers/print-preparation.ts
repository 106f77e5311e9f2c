import bars from './frame/bars.typ?raw';
import frame from './frame/frame.typ?raw';
import { legible } from './frame/legible.ts';
import type { Typesetter } from './frame/typst-compiler.ts';
import type { PaperOptions } from './paper-head.ts';
import type { PaperWords } from './paper-words.ts';
import preparation from './preparation/preparation.typ?raw';
import { type Preparation, preparationContent } from './preparation/preparation-content.ts';

/** The preparation sheet of one floor as the bytes of a PDF. */
export const printPreparation = (
  asked: Preparation,
  options: PaperOptions,
  paper: PaperWords,
  { typeset, has }: Typesetter,
): Uint8Array =>
  typeset([frame, bars, preparation].join('\n'), legible(preparationContent(asked, options, paper), has));
