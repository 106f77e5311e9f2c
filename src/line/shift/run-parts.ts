import { mergeTallies, runShifts } from './run-shifts.ts';
import type { ShiftLine } from './shift-line.ts';
import type { ShiftPlan, ShiftTally } from './shift-tally.ts';

/** Shifts that are run together: the sums do not hang on how many run at a time. */
const shiftsInPart = 100;

/** What is run: the sums of the shifts, or the good bottles of each. */
export interface RunAsked {
  readonly line: ShiftLine;
  readonly seed: number;
  readonly of: 'sums' | 'goods';
}

export type RunPart = Omit<ShiftPlan, 'seed'>;

export interface PartRan {
  readonly tally?: ShiftTally;
  readonly goods?: readonly number[];
}

/** Runs parts, here or on several cores, and gives what each came to in the order in which they were asked. */
export type RunParts = (asked: RunAsked, parts: readonly RunPart[]) => readonly PartRan[];

/** One part, wherever it is run. */
export const runPart = ({ line, seed, of }: RunAsked, { first, shifts }: RunPart): PartRan =>
  of === 'sums'
    ? { tally: runShifts(line, { seed, first, shifts }) }
    : {
        goods: Array.from({ length: shifts }, (_, i) => {
          const { goods } = runShifts(line, { seed, first: first + i, shifts: 1 });
          return goods.length - 1;
        }),
      };

export const runPartsHere: RunParts = (asked, parts) => parts.map((part) => runPart(asked, part));

const partsOf = (shifts: number): readonly RunPart[] =>
  Array.from({ length: Math.ceil(shifts / shiftsInPart) }, (_, i) => ({
    first: i * shiftsInPart,
    shifts: Math.min(shiftsInPart, shifts - i * shiftsInPart),
  }));

interface RunWhole {
  readonly seed: number;
  readonly shifts: number;
  /** Here, where none is handed in. */
  readonly runParts?: RunParts | undefined;
}

/** Sums over shifts from the first: the same to the last bit, whoever ran the parts. */
export const sumsOfShifts = (
  line: ShiftLine,
  { seed, shifts, runParts = runPartsHere }: RunWhole,
): ShiftTally =>
  mergeTallies(
    runParts({ line, seed, of: 'sums' }, partsOf(shifts)).flatMap(({ tally }) =>
      tally === undefined ? [] : [tally],
    ),
  );

/** Good bottles of each shift alone, in their order. */
export const goodsOfShifts = (
  line: ShiftLine,
  { seed, shifts, runParts = runPartsHere }: RunWhole,
): readonly number[] =>
  runParts({ line, seed, of: 'goods' }, partsOf(shifts)).flatMap(({ goods }) => goods ?? []);
