import type { Book } from '../book/index.ts';
import type { MeasuredAllowance, MeasuredSample, WeighedLot, WeighedTrial } from '../floor/fill/index.ts';
import {
  type RowsRead,
  readLotTable,
  readSampleTable,
  readTrialTable,
  type UsualOfSheet,
} from '../floor/fill/sheet/index.ts';
import { accept, type Problem, type Result } from '../quantity/problem.ts';
import { readAllowances, readLots, readSamples, readTrials } from '../record/read-fill-records.ts';
import { readTable, type Tab } from '../table/index.ts';
import { limits } from '../table/limits.ts';
import { words } from './words.ts';
import type { World } from './world.ts';

/** What a file of trials, bottles or lots holds. */
export interface FillFile<T> {
  readonly values: readonly T[];
  /** Row by row, where the file is a table. */
  readonly report?: RowsRead<unknown>;
  /** Measured allowances that stand among the records of the file. */
  readonly allowances?: readonly MeasuredAllowance[];
}

export type FillFileRead<T> =
  | Result<FillFile<T>>
  | { readonly ok: false; readonly problems: readonly Problem[]; readonly heading: string };

/** What tells the three kinds of file apart. */
interface Kind<T> {
  readonly fromText: (text: string) => Result<readonly T[]>;
  /** What else records tell of that is wanted beside. */
  readonly beside?: (text: string) => Pick<FillFile<T>, 'allowances'>;
  readonly fromRows: (
    rows: Tab['rows'],
    book: Book,
    usual: UsualOfSheet,
  ) => { readonly values: readonly T[]; readonly report: RowsRead<unknown> };
}

const trialKind: Kind<WeighedTrial> = {
  fromText: readTrials,
  beside: (text) => {
    // a list of trials by hand holds none
    const read = readAllowances(text);
    return read.ok ? { allowances: read.value } : {};
  },
  fromRows: (rows, book, usual) => {
    const report = readTrialTable(rows, book, usual);
    return { report, values: report.taken.map(({ value }) => value) };
  },
};

const sampleKind: Kind<MeasuredSample> = {
  fromText: readSamples,
  fromRows: (rows, book, usual) => {
    const report = readSampleTable(rows, book, usual);
    return { report, values: report.taken.map(({ value }) => value) };
  },
};

const lotKind: Kind<WeighedLot> = {
  fromText: readLots,
  fromRows: (rows, book, usual) => {
    const { lot, ...report } = readLotTable(rows, book, usual);
    return { report, values: lot === undefined ? [] : [lot] };
  },
};

/** The text of a file that is JSON: a table begins otherwise. */
const jsonIn = (bytes: Uint8Array): string | undefined => {
  const text = new TextDecoder().decode(bytes).replace(/^\uFEFF/, '');
  return /^\s*[[{]/.test(text) ? text : undefined;
};

const readFile =
  <T>({ fromText, beside, fromRows }: Kind<T>) =>
  async (
    path: string,
    book: Book,
    usual: Omit<UsualOfSheet, 'words'>,
    world: World,
  ): Promise<FillFileRead<T>> => {
    const bytes = await world.readBytes(path, limits.file);
    if (!bytes.ok) return bytes;
    const json = jsonIn(bytes.value);
    if (json !== undefined) {
      const read = fromText(json);
      return read.ok ? accept({ values: read.value, ...beside?.(json) }) : { ...read, heading: path };
    }
    const tabs = readTable(bytes.value);
    if (!tabs.ok) return { ...tabs, heading: path };
    // the first tab that has the headings; where none has, the first says what is missing
    const read = tabs.value.map(({ rows }) => fromRows(rows, book, { ...usual, words }));
    const found = read.find(({ report }) => report.problems.length === 0) ?? read[0];
    if (found === undefined) return accept({ values: [] });
    return found.report.problems.length > 0
      ? { ok: false, problems: found.report.problems, heading: path }
      : accept(found);
  };

export const readTrialsFile = readFile(trialKind);
export const readSamplesFile = readFile(sampleKind);
export const readLotFile = readFile(lotKind);
