import type { LaidJoin } from '../joins/index.ts';
import frame from './frame/frame.typ?raw';
import { legible } from './frame/legible.ts';
import type { Typesetter } from './frame/typst-compiler.ts';
import type { LabelStock } from './labels/label-stock.ts';
import labels from './labels/labels.typ?raw';
import { labelsContent } from './labels/labels-content.ts';
import type { PaperOptions } from './paper-head.ts';
import type { PaperWords } from './paper-words.ts';

/** Labels of joins as the bytes of a PDF: one page that says how to print them, then the sheets. */
export const printLabels = (
  joins: readonly LaidJoin[],
  stock: LabelStock,
  options: PaperOptions,
  paper: PaperWords,
  { typeset, has }: Typesetter,
): Uint8Array => {
  const { sheets, ...content } = labelsContent(joins, stock, options, paper);
  const texts = legible({ ...content, sheets: sheets.map(({ labels: each }) => ({ labels: each })) }, has);
  // pictures are no text for people: made legible they would be broken
  return typeset([frame, labels].join('\n'), { ...texts, codes: sheets.map(({ codes }) => codes) });
};
