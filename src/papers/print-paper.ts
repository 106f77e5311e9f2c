import { bookUnits } from '../book/book-units.ts';
import { floorBoundFor } from '../book/floor-bound-for.ts';
import type { Book } from '../book/index.ts';
import type { PaperKind } from '../book/paper-kinds.ts';
import { assessBook, remediesOf } from '../floor/index.ts';
import { laidJoins } from '../joins/index.ts';
import { proofOfBook } from '../proof/index.ts';
import { settingRegister } from '../proof/settings/index.ts';
import type { UnitSystem } from '../quantity/index.ts';
import type { Envelope, Head } from '../record/envelope.ts';
import type { CardAsked } from './card/card-content.ts';
import type { Typesetter } from './frame/typst-compiler.ts';
import { labelStock } from './labels/label-stock.ts';
import { type PageSize, type PaperOptions, pageOf } from './paper-head.ts';
import { makePaperWords } from './paper-words.ts';
import { findingsOfTrades, preparationOf } from './preparation/preparation-of.ts';
import { printCard } from './print-card.ts';
import { printCertificate } from './print-certificate.ts';
import { printDossier } from './print-dossier.ts';
import { printLabels } from './print-labels.ts';
import { printPrediction } from './print-prediction.ts';
import { printPreparation } from './print-preparation.ts';
import { printProtocol } from './print-protocol.ts';
import { printRegister } from './print-register.ts';
import { printSchedule } from './print-schedule.ts';
import type { ProtocolAsked } from './protocol/protocol-content.ts';

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
  const { paper: kind, book, records, heads = [], floor, format, units } = asked;
  const whole = assessBook(book, format === undefined ? {} : { format });
  const paper = makePaperWords(book, bookUnits(book, units), 'en');
  const tag = floorBoundFor(book, floor);
  const all = whole.floors.map((one) => one.floor);
  const asProved = (): readonly ProtocolAsked[] => {
    const proof = proofOfBook(book, whole, records);
    return proof.floors.map((on) => ({ proof, floor: on, heads }));
  };
  const asLeft = (): CardAsked => ({
    register: settingRegister(book, whole, records),
    floor: whole.floors.find((one) => one.floor === tag)!,
  });
  const asJoined = {
    records: records ?? [],
    pictures: asked.pictures ?? new Map(),
    floor: book.floors?.find((one) => one.tag === tag)?.name ?? tag,
  };
  switch (kind) {
    case 'preparation': {
      const shown = whole.floors.filter((one) => one.floor === tag);
      const sheet = preparationOf(whole, tag, remediesOf(book, shown, format, findingsOfTrades), paper);
      return { floors: [tag], bytes: printPreparation(sheet, options, paper, typesetter) };
    }
    case 'protocol':
    case 'certificate': {
      const on = asProved().find((one) => one.floor.floor === tag)!;
      const print = kind === 'protocol' ? printProtocol : printCertificate;
      return { floors: [tag], bytes: print(on, options, paper, typesetter) };
    }
    case 'settings':
      return { floors: all, bytes: printRegister(asLeft().register, options, paper, typesetter) };
    case 'card':
      return { floors: [tag], bytes: printCard(asLeft(), options, paper, typesetter) };
    case 'dossier': {
      const remedies = remediesOf(book, whole.floors, format);
      const parts = {
        assessment: whole,
        remedies,
        preparations: all.map((one) => preparationOf(whole, one, remedies, paper)),
        protocols: asProved(),
        card: asLeft(),
        joined: asJoined,
      };
      return { floors: all, bytes: printDossier(parts, options, paper, typesetter) };
    }
    case 'labels': {
      const sheets = labelStock(asked.stock, options.page ?? pageOf(book));
      const bytes = printLabels(laidJoins(book), sheets, options, paper, typesetter);
      return { floors: [], bytes, page: sheets.page };
    }
    case 'schedule':
      return { floors: [tag], bytes: printSchedule(asJoined, options, paper, typesetter) };
    case 'prediction': {
      const shown = whole.floors.filter((one) => floor === undefined || one.floor === floor);
      const remedies = remediesOf(book, shown, format);
      const bytes = printPrediction({ ...whole, floors: shown }, remedies, options, paper, typesetter);
      return { floors: shown.map((one) => one.floor), bytes };
    }
  }
};
