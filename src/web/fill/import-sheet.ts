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
import { readTable, tableProblemText, writeCsv, writeXlsx } from '../../table/index.ts';
import { fieldWords, makeCatalogue, prefixed } from '../../text/index.ts';
import type { RecordDraft } from '../commands/add-record.ts';
import { makeWords, type Words } from '../words/words.ts';

export type SheetOf = 'trials' | 'samples' | 'lot';

export interface SheetPlace {
  readonly book: Book;
  readonly floor: string;
  readonly format: string | undefined;
  readonly locale: string;
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
export const sheetWords = (locale: string): Words => makeWords(catalogue, locale);

/** What stands in a sheet is said by whoever brings it, where it names nobody. */
const bodyOf = (value: WeighedTrial | MeasuredSample | WeighedLot, by: string): unknown => {
  const { id: _id, at: _at, ...body } = value;
  return { ...body, by: value.by ?? by };
};

/** A sheet of bottles as records to be, row by row with what was not understood; nothing is written down here. */
export const readSheet = (
  what: SheetOf,
  bytes: Uint8Array,
  { book, floor, format, locale }: SheetPlace,
  by: string,
): Result<SheetReport> => {
  const tabs = readTable(bytes);
  if (!tabs.ok) return tabs;
  const rows = tabs.value[0]?.rows ?? [];
  const options = {
    words: sheetWords(locale),
    locale,
    floor,
    ...(format === undefined ? {} : { format }),
  };
  if (what === 'lot') {
    const { lot, taken, ...read } = readLotTable(rows, book, options);
    const drafts = lot === undefined ? [] : [{ kind: 'lot', version: 1, body: bodyOf(lot, by) }];
    return accept({ drafts, bottles: lot === undefined ? 0 : taken.length, read });
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
  return accept({ drafts, bottles: drafts.length, read });
};

/** The trials as the bytes of a sheet that this page reads again. */
export const writeTrials = (
  trials: readonly WeighedTrial[],
  locale: string,
  kind: 'xlsx' | 'csv',
): Uint8Array => {
  const words = sheetWords(locale);
  const table = trialTable(trials, { words });
  return kind === 'csv'
    ? new TextEncoder().encode(writeCsv(table))
    : writeXlsx(table, words.say('fillSheet.lists'));
};
