import type { FloorAssessment } from '../floor/assessment.ts';
import type { Packing } from '../packing/packing-of.ts';
import type { Typesetter } from './frame/typst-compiler.ts';
import packing from './packing/packing.typ?raw';
import { packingContent } from './packing/packing-content.ts';
import type { PaperOptions } from './paper-head.ts';
import type { PaperWords } from './paper-words.ts';
import { type PaperSource, setPaper } from './set-paper.ts';
import { withWorkings } from './workings/workings-content.ts';

/** The packing and lifting sheet. */
export const packingPaper = (
  asked: Packing,
  floors: readonly FloorAssessment[],
  options: PaperOptions,
  paper: PaperWords,
): PaperSource => ({
  template: packing,
  content: withWorkings(floors, options.bound, paper, (citations) =>
    packingContent(asked, options, citations, paper),
  ),
});

export const printPacking = (
  asked: Packing,
  floors: readonly FloorAssessment[],
  options: PaperOptions,
  paper: PaperWords,
  typesetter: Typesetter,
): Uint8Array => setPaper(packingPaper(asked, floors, options, paper), typesetter);
