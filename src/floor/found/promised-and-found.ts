import { type Book, kindAt, tryPatches, valueAt } from '../../book/index.ts';
import type { Kind } from '../../quantity/kinds.ts';
import { readEntry } from '../../quantity/read-entry.ts';
import { bookReader } from '../book-reader.ts';
import { type EveryFinding, everyFinding } from '../every-finding.ts';
import type { Verdict } from '../finding.ts';
import type { AnyFinding } from '../utilities/utility-finding.ts';
import { bookAsFound, type Laid } from './book-as-found.ts';
import type { FoundReading } from './reading.ts';

/** What a finding is about, for who reads what a difference does. */
export type Touched = 'rate' | 'washing' | 'margin';

/** What one reading does to a finding on its own. */
export interface FindingShift {
  readonly id: string;
  readonly touches: Touched;
  readonly from: Verdict;
  readonly to: Verdict;
  readonly marginFrom?: number;
  readonly marginTo?: number;
}

/** One place of a floor: what was said of it before, and what was read there. */
export interface PromisedAndFound {
  readonly floor: string;
  readonly path: string;
  readonly kind?: Kind;
  /** As it stands in the book; absent where nothing was said. */
  readonly promised?: {
    readonly value?: number;
    readonly low?: number;
    readonly high?: number;
    readonly by?: string;
  };
  readonly found: { readonly value?: number; readonly low?: number; readonly high?: number };
  readonly reading: FoundReading;
  /** The two widths don't meet; where nothing was promised there is nothing to differ from. */
  readonly differs: boolean;
  /** Running rate of the line with this reading alone, bottles a second. */
  readonly rateFrom?: number;
  readonly rateTo?: number;
  /** Findings that it moves on its own, those whose verdict turns first. */
  readonly shifts: readonly FindingShift[];
  /** Whose it is: the floor on which the line was built is the builder's, every other the site's. */
  readonly owner: 'builder' | 'site';
  /** The person who said it, or who answers for the floor. */
  readonly who?: string;
}

/** A margin that moves by less than this share of what is asked has not moved. */
const still = 1e-6;

const rates: ReadonlySet<string> = new Set(['runningRate', 'hourRate']);

const touchedBy = ({ id, utility }: AnyFinding): Touched =>
  rates.has(id) ? 'rate' : id === 'washerRate' || utility === 'heat' ? 'washing' : 'margin';

const shiftsOf = (before: readonly AnyFinding[], after: readonly AnyFinding[]): readonly FindingShift[] => {
  const now = new Map(after.map((finding) => [finding.id, finding]));
  return before
    .flatMap((was): FindingShift[] => {
      const is = now.get(was.id);
      if (is === undefined) return [];
      const moved = Math.abs((is.margin ?? 0) - (was.margin ?? 0)) > still;
      if (is.verdict === was.verdict && !moved) return [];
      return [
        {
          id: was.id,
          touches: touchedBy(was),
          from: was.verdict,
          to: is.verdict,
          ...(was.margin === undefined ? {} : { marginFrom: was.margin }),
          ...(is.margin === undefined ? {} : { marginTo: is.margin }),
        },
      ];
    })
    .sort((a, b) => Number(a.from === a.to) - Number(b.from === b.to));
};

const entryAt = (book: Book, path: string, kind: Kind | undefined) => {
  const given = valueAt(book, path);
  const read = given === undefined || kind === undefined ? undefined : readEntry(given, kind, { path });
  return read?.ok === true ? read.value : undefined;
};

const rangeOf = (book: Book, path: string, kind: Kind | undefined) => {
  const entry = entryAt(book, path, kind);
  return entry === undefined
    ? {}
    : { value: entry.value as number, low: entry.low as number, high: entry.high as number };
};

const personOf = (book: Book, floor: number): string | undefined => {
  const tag = book.floors?.[floor]?.people?.[0];
  const person = (book.about?.people ?? []).find((each) => each.tag === tag);
  return person?.name ?? tag;
};

/**
 * What the site stated and what was read on arrival, beside each other, and what each difference does.
 *
 * Method   each reading is laid alone over the book as promised and every finding of its floor is judged again
 * Returns  one entry a place that was read, those that turn a verdict first
 * Cost     one judgement of a floor a reading
 */
export const promisedAndFound = (
  book: Book,
  readings: readonly FoundReading[],
  { format }: { readonly format?: string } = {},
): readonly PromisedAndFound[] => {
  const as = bookAsFound(book, readings);
  const judged = (of: Book, floor: number): EveryFinding => everyFinding(bookReader(of), floor, format);
  const before = new Map<number, EveryFinding>();
  const one = ({ path, reading }: Laid): PromisedAndFound => {
    const floor = (book.floors ?? []).findIndex(({ tag }) => tag === reading.floor);
    const kind = kindAt(path);
    const alone = tryPatches(book, [{ path, value: valueAt(as.book, path) }]);
    const base = before.get(floor) ?? judged(book, floor);
    before.set(floor, base);
    const after = judged(alone, floor);
    const said = entryAt(book, path, kind);
    const promised = rangeOf(book, path, kind);
    const found = rangeOf(as.book, path, kind);
    const stood = valueAt(book, path);
    const rateFrom = base.values.runningRate;
    const rateTo = after.values.runningRate;
    const who = said?.by ?? personOf(book, floor);
    return {
      floor: reading.floor,
      path,
      reading,
      found,
      shifts: shiftsOf(base.findings, after.findings),
      owner: book.floors![floor]!.role === 'built on' ? 'builder' : 'site',
      differs:
        promised.low === undefined || found.low === undefined
          ? stood !== undefined && stood !== valueAt(as.book, path) && kind === undefined
          : found.low > promised.high || found.high < promised.low,
      ...(kind === undefined ? {} : { kind }),
      ...(stood === undefined
        ? {}
        : { promised: { ...promised, ...(said?.by === undefined ? {} : { by: said.by }) } }),
      ...(rateFrom === undefined ? {} : { rateFrom }),
      ...(rateTo === undefined ? {} : { rateTo }),
      ...(who === undefined ? {} : { who }),
    };
  };
  const turns = ({ shifts }: PromisedAndFound): number => shifts.filter(({ from, to }) => from !== to).length;
  return as.laid.map(one).sort((a, b) => turns(b) - turns(a));
};
