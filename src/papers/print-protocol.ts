import frame from './frame/frame.typ?raw';
import { legible } from './frame/legible.ts';
import type { Typesetter } from './frame/typst-compiler.ts';
import type { PaperOptions } from './paper-head.ts';
import type { PaperWords } from './paper-words.ts';
import protocol from './protocol/protocol.typ?raw';
import { type ProtocolAsked, protocolContent } from './protocol/protocol-content.ts';

/** The protocol of one floor as the bytes of a PDF: blank where nothing was recorded. */
export const printProtocol = (
  asked: ProtocolAsked,
  options: PaperOptions,
  paper: PaperWords,
  { typeset, has }: Typesetter,
): Uint8Array => typeset([frame, protocol].join('\n'), legible(protocolContent(asked, options, paper), has));
