import certificate from './certificate/certificate.typ?raw';
import { certificateContent } from './certificate/certificate-content.ts';
import type { Typesetter } from './frame/typst-compiler.ts';
import type { PaperOptions } from './paper-head.ts';
import type { PaperWords } from './paper-words.ts';
import type { ProtocolAsked } from './protocol/protocol-content.ts';
import { type PaperSource, setPaper } from './set-paper.ts';

/** The certificate of the last gate of a floor. */
export const certificatePaper = (
  asked: ProtocolAsked,
  options: PaperOptions,
  paper: PaperWords,
): PaperSource => ({
  template: certificate,
  content: certificateContent(asked, options, paper),
});

export const printCertificate = (
  asked: ProtocolAsked,
  options: PaperOptions,
  paper: PaperWords,
  typesetter: Typesetter,
): Uint8Array => setPaper(certificatePaper(asked, options, paper), typesetter);
