import bars from './frame/bars.typ?raw';
import charts from './frame/charts.typ?raw';
import frame from './frame/frame.typ?raw';
import { legible } from './frame/legible.ts';
import signing from './frame/signing.typ?raw';
import type { Pictures, Typesetter } from './frame/typst-compiler.ts';
import workings from './workings/workings.typ?raw';

/** A paper before it is set: the template, and everything that it shows. */
export interface PaperSource {
  readonly template: string;
  readonly content: unknown;
  /** Those that the template names. */
  readonly pictures?: Pictures;
}

/** A paper in the frame of all papers, as the bytes of a PDF. */
export const setPaper = (
  { template, content, pictures }: PaperSource,
  { typeset, has }: Typesetter,
): Uint8Array =>
  typeset([frame, bars, charts, signing, workings, template].join('\n'), legible(content, has), pictures);
