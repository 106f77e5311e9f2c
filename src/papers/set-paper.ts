import bars from './frame/bars.typ?raw';
import charts from './frame/charts.typ?raw';
import frame from './frame/frame.typ?raw';
import { legible } from './frame/legible.ts';
import signing from './frame/signing.typ?raw';
import type { Typesetter } from './frame/typst-compiler.ts';

/** A paper before it is set: the template, and everything that it shows. */
export interface PaperSource {
  readonly template: string;
  readonly content: unknown;
}

/** A paper in the frame of all papers, as the bytes of a PDF. */
export const setPaper = ({ template, content }: PaperSource, { typeset, has }: Typesetter): Uint8Array =>
  typeset([frame, bars, charts, signing, template].join('\n'), legible(content, has));
