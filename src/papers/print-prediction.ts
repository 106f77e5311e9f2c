import type { Assessment, Remedy } from '../floor/assessment.ts';
import bars from './frame/bars.typ?raw';
import charts from './frame/charts.typ?raw';
import frame from './frame/frame.typ?raw';
import { legible } from './frame/legible.ts';
import type { Typesetter } from './frame/typst-compiler.ts';
import type { PaperOptions } from './paper-head.ts';
import type { PaperWords } from './paper-words.ts';
import prediction from './prediction/prediction.typ?raw';
import { predictionContent } from './prediction/prediction-content.ts';

/** The prediction of the floors as the bytes of a PDF. */
export const printPrediction = (
  assessment: Assessment,
  remedies: readonly Remedy[],
  options: PaperOptions,
  paper: PaperWords,
  { typeset, has }: Typesetter,
): Uint8Array =>
  typeset(
    [frame, bars, charts, prediction].join('\n'),
    legible(predictionContent(assessment, remedies, options, paper), has),
  );
