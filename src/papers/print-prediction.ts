import type { Assessment, Remedy } from '../floor/assessment.ts';
import type { Typesetter } from './frame/typst-compiler.ts';
import type { PaperOptions } from './paper-head.ts';
import type { PaperWords } from './paper-words.ts';
import prediction from './prediction/prediction.typ?raw';
import { facing, predictionContent } from './prediction/prediction-content.ts';
import { type PaperSource, setPaper } from './set-paper.ts';
import { withWorkings } from './workings/workings-content.ts';

/** The prediction of the floors. */
export const predictionPaper = (
  assessment: Assessment,
  remedies: readonly Remedy[],
  options: PaperOptions,
  paper: PaperWords,
): PaperSource => ({
  template: prediction,
  content: withWorkings(facing(assessment.floors), options.bound, paper, (citations) =>
    predictionContent(assessment, remedies, options, citations, paper),
  ),
});

export const printPrediction = (
  assessment: Assessment,
  remedies: readonly Remedy[],
  options: PaperOptions,
  paper: PaperWords,
  typesetter: Typesetter,
): Uint8Array => setPaper(predictionPaper(assessment, remedies, options, paper), typesetter);
