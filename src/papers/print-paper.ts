import { bookUnits } from '../book/book-units.ts';
import { floorBoundFor } from '../book/floor-bound-for.ts';
import type { Book } from '../book/index.ts';
import type { PaperKind } from '../book/paper-kinds.ts';
import { assessBook, remediesOf } from '../floor/index.ts';
import { laidJoins } from '../joins/index.ts';
import { packingOf } from '../packing/packing-of.ts';
import { proofOfBook } from '../proof/index.ts';
import { settingRegister } from '../proof/settings/index.ts';
import type { UnitSystem } from '../quantity/index.ts';
import type { Envelope, Head } from '../record/envelope.ts';
import { trialsOf } from '../record/trials.ts';
import type { Translation } from '../text/index.ts';
import type { CardAsked } from './card/card-content.ts';
import { findingsOfDossier } from './dossier/findings-of-dossier.ts';
import type { FillAsked } from './fill/fill-content.ts';
import { fillOf } from './fill/fill-of.ts';
import type { Typesetter } from './frame/typst-compiler.ts';
import { labelStock } from './labels/label-stock.ts';
import { namedHeads } from './named-heads.ts';
import { type PageSize, type PaperOptions, pageOf } from './paper-head.ts';
import { makePaperWords, type PaperWords } from './paper-words.ts';
import { facing } from './prediction/prediction-content.ts';
import { findingsOfTrades, preparationOf } from './preparation/preparation-of.ts';
import { printCard } from './print-card.ts';
import { certificatePaper } from './print-certificate.ts';
import { printDossier } from './print-dossier.ts';
import { printFill } from './print-fill.ts';
import { printLabels } from './print-labels.ts';
import { printOpen } from './print-open.ts';
import { printPacking } from './print-packing.ts';
import { printPrediction } from './print-prediction.ts';
import { preparationPaper } from './print-preparation.ts';
import { protocolPaper } from './print-protocol.ts';
import { printRegister } from './print-register.ts';
import { schedulePaper } from './print-schedule.ts';
import type { ProtocolAsked } from './protocol/protocol-content.ts';
import { type PaperSource, setPaper } from './set-paper.ts';
import { makeCitations } from './workings/citations.ts';
import { withWorkings } from './workings/workings-content.ts';

/** A paper that somebody wants, with everything that it is made from. */
export interface PaperAsked {
  readonly paper: PaperKind;
  readonly book: Book;
  /** Absent: nothing was recorded, the papers are blank where records would stand. */
  readonly records?: readonly Envelope[] | undefined;
  readonly heads?: readonly Head[] | undefined;
  /** Tag; absent, all floors, or of a paper of one floor where the line is bound for. */
  readonly floor?: string | undefined;
  readonly format?: string | undefined;
  readonly units?: UnitSystem | undefined;
  /** Sheets of labels; absent, those of the size of the page. */
  readonly stock?: string | undefined;
  /** Bytes of photographs by their digest, as many as are at hand; those that a paper shows are its wanted ones. */
  readonly pictures?: ReadonlyMap<string, Uint8Array> | undefined;
  /** What is said in place of the English; absent, the paper is English. */
  readonly translation?: Translation | undefined;
  /** Of a paper that is filled in by people of two languages. */
  readonly beside?: Beside | undefined;
}

/** The second language of a paper; English has no translation. */
export interface Beside {
  readonly translation: Translation | undefined;
}

export interface PrintedPaper {
  /** Tags of the floors on it. */
  readonly floors: readonly string[];
  readonly bytes: Uint8Array;
  /** Where the paper is of another size than was asked for: labels are of that of their stock. */
  readonly page?: PageSize;
}

/** A paper of a book with at least one floor, as the bytes of a PDF; floor and format are of the book. */
export const printPaper = (
  asked: PaperAsked,
  options: PaperOptions,
  typesetter: Typesetter,
): PrintedPaper => {
  const { paper: kind, book, records, floor, format, units } = asked;
  const heads = namedHeads(asked.heads ?? [], records ?? []);
  const whole = assessBook(book, format === undefined ? {} : { format });
  const { translation, beside } = asked;
  const wishes = bookUnits(book, units);
  const paper = makePaperWords(book, wishes, translation?.language ?? 'en', translation);
  /** Sets a paper, the words of the second language beside those of the first where one is asked. */
  const set = (source: (words: PaperWords) => PaperSource): Uint8Array => {
    const own = source(paper);
    if (beside === undefined) return setPaper(own, typesetter);
    const other = makePaperWords(book, wishes, paper.locale, beside.translation);
    return setPaper({ ...own, beside: source(other).content }, typesetter);
  };
  const tag = floorBoundFor(book, floor);
  const all = whole.floors.map((one) => one.floor);
  const assessed = facing(whole.floors);
  const asProved = (): readonly ProtocolAsked[] => {
    const proof = proofOfBook(book, whole, records);
    return proof.floors.map((on) => ({ proof, floor: on, assessed, heads }));
  };
  const asLeft = (): CardAsked => ({
    register: settingRegister(book, whole, records),
    floor: whole.floors.find((one) => one.floor === tag)!,
  });
  const asFilled = (): FillAsked => ({
    fill: fillOf(
      book,
      whole.floors.find((one) => one.floor === tag)!,
      asLeft().register,
      records ?? [],
      format,
    ),
    trials: trialsOf(records ?? []),
    heads,
  });
  const asJoined = {
    records: records ?? [],
    pictures: asked.pictures ?? new Map(),
    floor: book.floors?.find((one) => one.tag === tag)?.name ?? tag,
  };
  switch (kind) {
    case 'preparation': {
      const shown = whole.floors.filter((one) => one.floor === tag);
      const remedies = remediesOf(book, shown, format, findingsOfTrades);
      const source = (words: PaperWords): PaperSource => {
        const sheet = withWorkings(assessed, undefined, words, (citations) =>
          preparationOf(whole, tag, remedies, words, citations),
        );
        return preparationPaper(sheet, options, words);
      };
      return { floors: [tag], bytes: set(source) };
    }
    case 'protocol':
    case 'certificate': {
      const on = asProved().find((one) => one.floor.floor === tag)!;
      const source = kind === 'protocol' ? protocolPaper : certificatePaper;
      return { floors: [tag], bytes: set((words) => source(on, options, words)) };
    }
    case 'fill':
      return { floors: [tag], bytes: printFill(asFilled(), assessed, options, paper, typesetter) };
    case 'open': {
      const proof = proofOfBook(book, whole, records);
      const shown = all.filter((one) => floor === undefined || one === floor);
      return { floors: shown, bytes: printOpen({ proof, floor, heads }, options, paper, typesetter) };
    }
    case 'settings':
      return { floors: all, bytes: printRegister(asLeft().register, assessed, options, paper, typesetter) };
    case 'card':
      return { floors: [tag], bytes: printCard(asLeft(), assessed, options, paper, typesetter) };
    case 'dossier': {
      const remedies = remediesOf(book, whole.floors, format, findingsOfDossier);
      const citations = makeCitations(assessed, paper);
      const parts = {
        citations,
        assessment: whole,
        remedies,
        preparations: all.map((one) => preparationOf(whole, one, remedies, paper, citations)),
        protocols: asProved(),
        card: asLeft(),
        fill: asFilled(),
        joined: asJoined,
        packing: packingOf(book, whole, tag, records),
      };
      return { floors: all, bytes: printDossier(parts, options, paper, typesetter) };
    }
    case 'labels': {
      const sheets = labelStock(asked.stock, options.page ?? pageOf(book));
      const bytes = printLabels(laidJoins(book), sheets, options, paper, typesetter);
      return { floors: [], bytes, page: sheets.page };
    }
    case 'packing': {
      const packing = packingOf(book, whole, tag, records);
      return { floors: [tag], bytes: printPacking(packing, assessed, options, paper, typesetter) };
    }
    case 'schedule':
      return { floors: [tag], bytes: set((words) => schedulePaper(asJoined, options, words, typesetter)) };
    case 'prediction': {
      const shown = whole.floors.filter((one) => floor === undefined || one.floor === floor);
      const remedies = remediesOf(book, shown, format);
      const bytes = printPrediction({ ...whole, floors: shown }, remedies, options, paper, typesetter);
      return { floors: shown.map((one) => one.floor), bytes };
    }
  }
};
