import type { Typesetter } from './frame/typst-compiler.ts';
import type { PaperOptions } from './paper-head.ts';
import type { PaperWords } from './paper-words.ts';
import protocol from './protocol/protocol.typ?raw';
import { type ProtocolAsked, protocolContent } from './protocol/protocol-content.ts';
import { type PaperSource, setPaper } from './set-paper.ts';
import { withWorkings } from './workings/workings-content.ts';

/** The protocol of one floor: blank where nothing was recorded. */
export const protocolPaper = (
  asked: ProtocolAsked,
  options: PaperOptions,
  paper: PaperWords,
): PaperSource => ({
  template: protocol,
  content: withWorkings(asked.assessed, options.bound, paper, (citations) =>
    protocolContent(asked, options, citations, paper),
  ),
});

export const printProtocol = (
  asked: ProtocolAsked,
  options: PaperOptions,
  paper: PaperWords,
  typesetter: Typesetter,
): Uint8Array => setPaper(protocolPaper(asked, options, paper), typesetter);
