import type { Assessment, Remedy } from '../floor/assessment.ts';
import type { Packing } from '../packing/packing-of.ts';
import type { CardAsked } from './card/card-content.ts';
import dossier from './dossier/dossier.typ?raw';
import type { FillAsked } from './fill/fill-content.ts';
import type { Typesetter } from './frame/typst-compiler.ts';
import { type PaperOptions, paperHead, subtitleOf } from './paper-head.ts';
import type { PaperWords } from './paper-words.ts';
import { facing } from './prediction/prediction-content.ts';
import type { Preparation } from './preparation/preparation-content.ts';
import { cardPaper } from './print-card.ts';
import { certificatePaper } from './print-certificate.ts';
import { fillPaper } from './print-fill.ts';
import { openPaper } from './print-open.ts';
import { packingPaper } from './print-packing.ts';
import { predictionPaper } from './print-prediction.ts';
import { preparationPaper } from './print-preparation.ts';
import { protocolPaper } from './print-protocol.ts';
import { registerPaper } from './print-register.ts';
import { type ScheduleSources, schedulePaper } from './print-schedule.ts';
import { headLines } from './proof-lines.ts';
import type { ProtocolAsked } from './protocol/protocol-content.ts';
import { setPaper } from './set-paper.ts';
import type { Citations } from './workings/citations.ts';
import { workingsContent } from './workings/workings-content.ts';

/** What the papers that are bound together are made from; floors in the order in which the line comes to them. */
export interface DossierAsked {
  /** What its papers name; the preparations have done so already. */
  readonly citations: Citations;
  readonly assessment: Assessment;
  readonly remedies: readonly Remedy[];
  readonly preparations: readonly Preparation[];
  readonly protocols: readonly ProtocolAsked[];
  readonly card: CardAsked;
  readonly fill: FillAsked;
  readonly joined: ScheduleSources;
  readonly packing: Packing;
}

/** One of the papers: its template sees its own content under the names that it has when it is printed alone. */
const bound = (template: string, i: number): string =>
  ['#[', `#let data = parts.at(${i})`, '#let head = data.head', template, ']', '#pagebreak(weak: true)'].join(
    '\n',
  );

/** All papers of a hand-over as the bytes of one PDF, with a list of what is in it. */
export const printDossier = (
  { citations, assessment, remedies, preparations, protocols, card, fill, joined, packing }: DossierAsked,
  alone: PaperOptions,
  paper: PaperWords,
  typesetter: Typesetter,
): Uint8Array => {
  const { say } = paper;
  const last = protocols.at(-1);
  const options = { ...alone, bound: citations };
  const assessed = facing(assessment.floors);
  const papers = [
    predictionPaper(assessment, remedies, options, paper),
    ...preparations.map((asked) => preparationPaper(asked, options, paper)),
    ...protocols.map((asked) => protocolPaper(asked, options, paper)),
    packingPaper(packing, assessed, options, paper),
    schedulePaper(joined, options, paper, typesetter),
    fillPaper(fill, assessed, options, paper),
    registerPaper(card.register, assessed, options, paper),
    cardPaper(card, assessed, options, paper),
    ...(last === undefined
      ? []
      : [
          openPaper({ proof: last.proof, heads: last.heads }, options, paper),
          certificatePaper(last, options, paper),
        ]),
  ];
  const content = {
    head: { ...paperHead(say('dossier.title'), options, paper), caution: say('dossier.foot') },
    subtitle: subtitleOf(paper),
    about: say('dossier.about'),
    contents: say('dossier.contents'),
    heads: headLines(last?.heads ?? [], paper),
    parts: papers.map((one) => one.content),
    // after all that names one
    workings: workingsContent(citations, paper),
  };
  const bodies = papers.map(({ template }, i) => bound(template, i));
  return setPaper(
    {
      template: [
        dossier,
        '#pagebreak(weak: true)',
        ...bodies,
        '#workings-appendix(data.workings, apart: true)',
      ].join('\n'),
      content,
      pictures: new Map(papers.flatMap(({ pictures = new Map() }) => [...pictures])),
    },
    typesetter,
  );
};
