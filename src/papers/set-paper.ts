import { inTwoLanguages } from './beside/in-two-languages.ts';
import bars from './frame/bars.typ?raw';
import charts from './frame/charts.typ?raw';
import frame from './frame/frame.typ?raw';
import { legible } from './frame/legible.ts';
import signing from './frame/signing.typ?raw';
import type { Pictures, Typesetter } from './frame/typst-compiler.ts';
import plan from './plan/plan.typ?raw';
import workings from './workings/workings.typ?raw';

/** A paper before it is set: the template, and everything that it shows. */
export interface PaperSource {
  readonly template: string;
  readonly content: unknown;
  /** Those that the template names. */
  readonly pictures?: Pictures;
  /** The same content in a second language, to stand beside the first. */
  readonly beside?: unknown;
}

/** A paper in the frame of all papers, as the bytes of a PDF. */
export const setPaper = (
  { template, content, pictures, beside }: PaperSource,
  { typeset, has }: Typesetter,
): Uint8Array => {
  const own = legible(content, has);
  const shown = beside === undefined ? own : inTwoLanguages(own, legible(beside, has));
  return typeset([frame, bars, charts, plan, signing, workings, template].join('\n'), shown, pictures);
};
