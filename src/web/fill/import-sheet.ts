import { type Book, bookProblemText } from '../../book/index.ts';
import { fillProblemText } from '../../floor/fill/fill.text.ts';
import type { MeasuredSample, WeighedLot, WeighedTrial } from '../../floor/fill/index.ts';
import {
  fillSheetWords,
  type RowsRead,
  readLotTable,
  readSampleTable,
  readTrialTable,
  trialTable,
} from '../../floor/fill/sheet/index.ts';
import { kindText, quantityProblemText } from '../../quantity/index.ts';
import { accept, type Result } from '../../quantity/problem.ts';
import { readTable, type Tab, tableProblemText, writeCsv, writeXlsx } from '../../table/index.ts';
import { fieldWords, makeCatalogue, prefixed } from '../../text/index.ts';
import type { RecordDraft } from '../commands/add-record.ts';
import { makeWords, type Words, wordsOf } from '../words/words.ts';

export type SheetOf = 'trials' | 'samples' | 'lot';

type Speech = Pick<Words, 'locale' | 'translation'>;

export interface SheetPlace {
  readonly book: Book;
  readonly floor: string;
  readonly format: string | undefined;
  /** In the language of whom. */
  readonly speech: Speech;
}

/** A record to be, without its name: that comes when it is taken. */
export type SheetDraft = Pick<RecordDraft, 'kind' | 'version' | 'body'> & { readonly at?: string };

export interface SheetReport {
  readonly drafts: readonly SheetDraft[];
  /** Bottles that would be taken. */
  readonly bottles: number;
  readonly read: Pick<RowsRead<unknown>, 'notUnderstood' | 'empty' | 'unknown' | 'problems'>;
}

const catalogue = makeCatalogue([
  quantityProblemText,
  bookProblemText,
  tableProblemText,
  fillProblemText,
  fillSheetWords,
  prefixed('kind.', kindText),
  fieldWords,
]);

/** Words of the sheets and of what can be wrong in one. */
export const sheetWords = (page: Speech): Words => wordsOf(catalogue, page);

/** What stands in a sheet is said by whoever brings it, where it names nobody. */
const bodyOf = (value: WeighedTrial | MeasuredSample | WeighedLot, by: string): unknown => {
  const { id: _id, at: _at, ...body } = value;
  return { ...body, by: value.by ?? by };
};

const reportOf = (
  what: SheetOf,
  rows: Tab['rows'],
  { book, floor, format, speech }: SheetPlace,
  words: Words,
  by: string,
): SheetReport => {
  const options = {
    words,
    locale: speech.locale,
    floor,
    ...(format === undefined ? {} : { format }),
  };
  if (what === 'lot') {
    const { lot, taken, ...read } = readLotTable(rows, book, options);
    const drafts = lot === undefined ? [] : [{ kind: 'lot', version: 1, body: bodyOf(lot, by) }];
    return { drafts, bottles: lot === undefined ? 0 : taken.length, read };
  }
  const { taken, ...read } =
    what === 'trials' ? readTrialTable(rows, book, options) : readSampleTable(rows, book, options);
  const [kind, version] = what === 'trials' ? (['trial', 2] as const) : (['sample', 1] as const);
  const drafts = taken.map(({ value }: { readonly value: WeighedTrial | MeasuredSample }) => ({
    kind,
    version,
    body: bodyOf(value, by),
    ...(value.at === undefined ? {} : { at: value.at }),
  }));
  return { drafts, bottles: drafts.length, read };
};

/** A sheet of bottles as records to be, row by row with what was not understood; nothing is written down here. */
export const readSheet = (
  what: SheetOf,
  bytes: Uint8Array,
  place: SheetPlace,
  by: string,
): Result<SheetReport> => {
  const tabs = readTable(bytes);
  if (!tabs.ok) return tabs;
  const rows = tabs.value[0]?.rows ?? [];
  const own = reportOf(what, rows, place, sheetWords(place.speech), by);
  if (own.bottles > 0 || place.speech.translation === undefined) return accept(own);
  // its headings may be English, whatever the page speaks
  const english = reportOf(what, rows, place, makeWords(catalogue, 'en'), by);
  return accept(english.bottles > 0 ? english : own);
};

/** The trials as the bytes of a sheet that this page reads again. */
export const writeTrials = (
  trials: readonly WeighedTrial[],
  speech: Speech,
  kind: 'xlsx' | 'csv',
): Uint8Array => {
  const words = sheetWords(speech);
  const table = trialTable(trials, { words });
  return kind === 'csv'
    ? new TextEncoder().encode(writeCsv(table))
    : writeXlsx(table, words.say('fillSheet.lists'));
};
