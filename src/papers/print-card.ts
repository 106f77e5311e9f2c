import type { FloorAssessment } from '../floor/assessment.ts';
import card from './card/card.typ?raw';
import { type CardAsked, cardContent } from './card/card-content.ts';
import type { Typesetter } from './frame/typst-compiler.ts';
import type { PaperOptions } from './paper-head.ts';
import type { PaperWords } from './paper-words.ts';
import { type PaperSource, setPaper } from './set-paper.ts';
import { withWorkings } from './workings/workings-content.ts';

/** The operator's card of one floor and bottle: one page to hang up, and behind it for the file what its figures rest on. */
export const cardPaper = (
  asked: CardAsked,
  assessed: readonly FloorAssessment[],
  options: PaperOptions,
  paper: PaperWords,
): PaperSource => ({
  template: card,
  content: withWorkings(assessed, options.bound, paper, (citations) =>
    cardContent(asked, options, citations, paper),
  ),
});

export const printCard = (
  asked: CardAsked,
  assessed: readonly FloorAssessment[],
  options: PaperOptions,
  paper: PaperWords,
  typesetter: Typesetter,
): Uint8Array => setPaper(cardPaper(asked, assessed, options, paper), typesetter);
