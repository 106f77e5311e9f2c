import card from './card/card.typ?raw';
import { type CardAsked, cardContent } from './card/card-content.ts';
import type { Typesetter } from './frame/typst-compiler.ts';
import type { PaperOptions } from './paper-head.ts';
import type { PaperWords } from './paper-words.ts';
import { type PaperSource, setPaper } from './set-paper.ts';

/** The operator's card of one floor and bottle: one page. */
export const cardPaper = (asked: CardAsked, options: PaperOptions, paper: PaperWords): PaperSource => ({
  template: card,
  content: cardContent(asked, options, paper),
});

export const printCard = (
  asked: CardAsked,
  options: PaperOptions,
  paper: PaperWords,
  typesetter: Typesetter,
): Uint8Array => setPaper(cardPaper(asked, options, paper), typesetter);
