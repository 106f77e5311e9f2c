import type { Book } from '../../book/index.ts';
import { bookReader } from '../../floor/book-reader.ts';
import { formatOf } from '../../floor/read-floor.ts';
import {
  type BoundShift,
  bindShift,
  type ShiftChangeTried,
  type ShiftRecords,
  type ShiftWashing,
  shiftChanges,
  shiftWashing,
} from '../../floor/shift/index.ts';
import { makeTracer } from '../../floor/tracer.ts';
import {
  type ChangeTally,
  mergeChanges,
  mergeTallies,
  runChange,
  runShifts,
  type ShiftChange,
  type ShiftFigures,
  type ShiftLine,
  type ShiftTally,
  shiftChange,
  shiftFigures,
} from '../../line/shift/index.ts';
import { lineAtIndex } from './line-at-index.ts';

export interface ShiftQuestion {
  readonly book: Book;
  readonly floor: string;
  readonly format?: string;
  readonly seed: number;
  /** Trials and runs that were recorded on the floors. */
  readonly recorded?: ShiftRecords;
  /** How many shifts are run; the first few are told at once. */
  readonly shifts: number;
  /** What the shifts themselves give, or what each change of them does. */
  readonly of: 'shifts' | 'changes';
  /** The washer runs at so many seconds instead of its own: for the washing alone. */
  readonly index?: number;
}

/** What a change is worth, so far. */
export interface ChangeWorth {
  readonly change: Omit<ShiftChangeTried, 'line'>;
  readonly worth: ShiftChange;
}

/** What the shifts of one floor say, as plain data: it comes out of a worker and narrows while more come. */
export interface ShiftAnswer {
  readonly ground: BoundShift;
  readonly figures?: ShiftFigures;
  /** Good bottles of the first shifts, in their order: what a sheet is opened with. */
  readonly firstGoods?: readonly number[];
  /** What the bottles of these shifts had in each zone, against what it needs. */
  readonly washing?: ShiftWashing;
  readonly worth: readonly ChangeWorth[];
  /** Share of the work that is over. */
  readonly progress: number;
  readonly done: boolean;
}

/** Shifts of the first answer: an interval wants some, and a reader does not want to wait. */
const firstShifts = 10;
/** Pairs of shifts for a change: they share their chances, so fewer tell as much. */
const pairShare = 0.2;
const leastPairs = 10;
/** Shifts that an address of a sheet still holds. */
const inAddress = 12;

/** Parts of a run, each twice the one before, so that the answer narrows evenly. */
export const partsOf = (shifts: number): readonly { readonly first: number; readonly shifts: number }[] => {
  const parts: { first: number; shifts: number }[] = [];
  for (let first = 0; first < shifts; ) {
    const part = Math.min(shifts - first, Math.max(firstShifts, first));
    parts.push({ first, shifts: part });
    first += part;
  }
  return parts;
};

const placeOf = (book: Book, floor: string): number =>
  (book.floors ?? []).findIndex(({ tag }) => tag === floor);

/** What the shifts of one floor say: soon and rough, then finer. */
function* runAnswers(
  { book, floor, format, seed, shifts }: ShiftQuestion,
  ground: BoundShift,
  line: ShiftLine,
): Generator<ShiftAnswer> {
  const reader = bookReader(book);
  const where = { floor: placeOf(book, floor), formatPath: formatOf(book, format).path };
  let tally: ShiftTally | undefined;
  const firstGoods = Array.from(
    { length: Math.min(inAddress, shifts) },
    (_, shift) => shiftFigures(line, runShifts(line, { seed, first: shift, shifts: 1 })).good.mean,
  );
  for (const part of partsOf(shifts)) {
    const fresh = runShifts(line, { seed, ...part });
    tally = tally === undefined ? fresh : mergeTallies([tally, fresh]);
    const progress = tally.shifts / shifts;
    const figures = shiftFigures(line, tally);
    yield {
      ground,
      figures,
      washing: shiftWashing(reader, where, makeTracer(), figures.contacts),
      firstGoods,
      worth: [],
      progress,
      done: progress >= 1,
    };
  }
}

/** What each change is worth, one after the other. */
function* worthAnswers(
  { seed, shifts }: ShiftQuestion,
  ground: BoundShift,
  line: ShiftLine,
): Generator<ShiftAnswer> {
  const pairs = Math.max(leastPairs, Math.round(pairShare * shifts));
  const changes = shiftChanges(line);
  const worth: ChangeWorth[] = [];
  for (const [at, { line: after, ...change }] of changes.entries()) {
    let pair: ChangeTally | undefined;
    for (const part of partsOf(pairs)) {
      const fresh = runChange(line, after, { seed, ...part });
      pair = pair === undefined ? fresh : mergeChanges([pair, fresh]);
      worth[at] = { change, worth: shiftChange(pair) };
      const progress = (at + pair.shifts / pairs) / changes.length;
      yield { ground, worth: [...worth], progress, done: at + 1 === changes.length && pair.shifts >= pairs };
    }
  }
  if (changes.length === 0) yield { ground, worth, progress: 1, done: true };
}

/** The answer to a question, told again whenever more of it is there. */
export function* shiftAnswers(question: ShiftQuestion): Generator<ShiftAnswer> {
  const { book, floor, format, index, recorded } = question;
  const ground = bindShift(book, placeOf(book, floor), format, recorded);
  if (ground.line === undefined) {
    yield { ground, worth: [], progress: 1, done: true };
    return;
  }
  const line = index === undefined ? ground.line : lineAtIndex(ground.line, index);
  yield* question.of === 'changes'
    ? worthAnswers(question, ground, line)
    : runAnswers(question, ground, line);
}
