import type { Typesetter } from './frame/typst-compiler.ts';
import open from './open/open.typ?raw';
import { type OpenAsked, openContent } from './open/open-content.ts';
import type { PaperOptions } from './paper-head.ts';
import type { PaperWords } from './paper-words.ts';
import { type PaperSource, setPaper } from './set-paper.ts';

/** What is open: punch list, carry-over and what others own. */
export const openPaper = (asked: OpenAsked, options: PaperOptions, paper: PaperWords): PaperSource => ({
  template: open,
  content: openContent(asked, options, paper),
});

export const printOpen = (
  asked: OpenAsked,
  options: PaperOptions,
  paper: PaperWords,
  typesetter: Typesetter,
): Uint8Array => setPaper(openPaper(asked, options, paper), typesetter);
