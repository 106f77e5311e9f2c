import type { FloorAssessment } from '../floor/assessment.ts';
import fill from './fill/fill.typ?raw';
import { type FillAsked, fillContent } from './fill/fill-content.ts';
import type { Typesetter } from './frame/typst-compiler.ts';
import type { PaperOptions } from './paper-head.ts';
import type { PaperWords } from './paper-words.ts';
import { type PaperSource, setPaper } from './set-paper.ts';
import { withWorkings } from './workings/workings-content.ts';

/** The fill certificate of one floor. */
export const fillPaper = (
  asked: FillAsked,
  floors: readonly FloorAssessment[],
  options: PaperOptions,
  paper: PaperWords,
): PaperSource => ({
  template: fill,
  content: withWorkings(floors, options.bound, paper, (citations) =>
    fillContent(asked, options, citations, paper),
  ),
});

export const printFill = (
  asked: FillAsked,
  floors: readonly FloorAssessment[],
  options: PaperOptions,
  paper: PaperWords,
  typesetter: Typesetter,
): Uint8Array => setPaper(fillPaper(asked, floors, options, paper), typesetter);
