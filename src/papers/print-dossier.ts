import type { Assessment, Remedy } from '../floor/assessment.ts';
import card from './card/card.typ?raw';
import { type CardAsked, cardContent } from './card/card-content.ts';
import certificate from './certificate/certificate.typ?raw';
import { certificateContent } from './certificate/certificate-content.ts';
import dossier from './dossier/dossier.typ?raw';
import bars from './frame/bars.typ?raw';
import charts from './frame/charts.typ?raw';
import frame from './frame/frame.typ?raw';
import { legible } from './frame/legible.ts';
import type { Typesetter } from './frame/typst-compiler.ts';
import { type PaperOptions, paperHead, subtitleOf } from './paper-head.ts';
import type { PaperWords } from './paper-words.ts';
import prediction from './prediction/prediction.typ?raw';
import { predictionContent } from './prediction/prediction-content.ts';
import preparation from './preparation/preparation.typ?raw';
import { type Preparation, preparationContent } from './preparation/preparation-content.ts';
import protocol from './protocol/protocol.typ?raw';
import { type ProtocolAsked, protocolContent } from './protocol/protocol-content.ts';
import register from './register/register.typ?raw';
import { registerContent } from './register/register-content.ts';

/** What the papers that are bound together are made from; floors in the order in which the line comes to them. */
export interface DossierAsked {
  readonly assessment: Assessment;
  readonly remedies: readonly Remedy[];
  readonly preparations: readonly Preparation[];
  readonly protocols: readonly ProtocolAsked[];
  readonly card: CardAsked;
}

/** One of the papers: its template sees its own content under the names that it has when it is printed alone. */
const bound = (template: string, i: number): string =>
  ['#[', `#let data = parts.at(${i})`, '#let head = data.head', template, ']', '#pagebreak(weak: true)'].join(
    '\n',
  );

/** All papers of a hand-over as the bytes of one PDF, with a list of what is in it. */
export const printDossier = (
  { assessment, remedies, preparations, protocols, card: cardAsked }: DossierAsked,
  options: PaperOptions,
  paper: PaperWords,
  { typeset, has }: Typesetter,
): Uint8Array => {
  const { say } = paper;
  const last = protocols.at(-1);
  const papers: readonly { readonly template: string; readonly content: unknown }[] = [
    { template: prediction, content: predictionContent(assessment, remedies, options, paper) },
    ...preparations.map((asked) => ({
      template: preparation,
      content: preparationContent(asked, options, paper),
    })),
    ...protocols.map((asked) => ({ template: protocol, content: protocolContent(asked, options, paper) })),
    { template: register, content: registerContent(cardAsked.register, options, paper) },
    { template: card, content: cardContent(cardAsked, options, paper) },
    ...(last === undefined
      ? []
      : [{ template: certificate, content: certificateContent(last, options, paper) }]),
  ];
  const content = {
    head: { ...paperHead(say('dossier.title'), options, paper), caution: say('dossier.foot') },
    subtitle: subtitleOf(paper),
    about: say('dossier.about'),
    contents: say('dossier.contents'),
    heads: (last?.heads ?? []).map(({ writer, sequence, hash }) =>
      say('protocol.head', { writer, sequence, hash }),
    ),
    parts: papers.map((one) => one.content),
  };
  const template = [
    frame,
    bars,
    charts,
    dossier,
    '#pagebreak(weak: true)',
    ...papers.map((one, i) => bound(one.template, i)),
  ].join('\n');
  return typeset(template, legible(content, has));
};
