import certificate from './certificate/certificate.typ?raw';
import { certificateContent } from './certificate/certificate-content.ts';
import frame from './frame/frame.typ?raw';
import { legible } from './frame/legible.ts';
import type { Typesetter } from './frame/typst-compiler.ts';
import type { PaperOptions } from './paper-head.ts';
import type { PaperWords } from './paper-words.ts';
import type { ProtocolAsked } from './protocol/protocol-content.ts';

/** The certificate of the last gate of a floor as the bytes of a PDF. */
export const printCertificate = (
  asked: ProtocolAsked,
  options: PaperOptions,
  paper: PaperWords,
  { typeset, has }: Typesetter,
): Uint8Array =>
  typeset([frame, certificate].join('\n'), legible(certificateContent(asked, options, paper), has));
