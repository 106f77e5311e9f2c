import card from './card/card.typ?raw';
import { type CardAsked, cardContent } from './card/card-content.ts';
import frame from './frame/frame.typ?raw';
import { legible } from './frame/legible.ts';
import type { Typesetter } from './frame/typst-compiler.ts';
import type { PaperOptions } from './paper-head.ts';
import type { PaperWords } from './paper-words.ts';

/** The operator's card of one floor and bottle as the bytes of a PDF: one page. */
export const printCard = (
  asked: CardAsked,
  options: PaperOptions,
  paper: PaperWords,
  { typeset, has }: Typesetter,
): Uint8Array => typeset([frame, card].join('\n'), legible(cardContent(asked, options, paper), has));
