import type { Book, Patch } from '../../book/index.ts';
import { toSi } from '../../quantity/index.ts';
import type { Kind } from '../../quantity/kinds.ts';
import { roundStep, writtenAt, writtenPatch, writtenSi, writtenText } from '../remedies/written-value.ts';
import type { UtilityLever } from './need.ts';

/** Preferred numbers, series R20 of ISO 3; from memory. */
const r20 = [
  1, 1.12, 1.25, 1.4, 1.6, 1.8, 2, 2.24, 2.5, 2.8, 3.15, 3.55, 4, 4.5, 5, 5.6, 6.3, 7.1, 8, 9,
] as const;

/** The preferred numbers beyond one, from the next on: upward, or downward. */
const preferredBeyond = (number: number, count: number, up: boolean): readonly number[] => {
  const found: number[] = [];
  const leads = up ? r20 : r20.toReversed();
  for (let power = 10 ** Math.floor(Math.log10(number)); found.length < count; power *= up ? 10 : 0.1) {
    for (const lead of leads) {
      const one = Number((lead * power).toPrecision(4));
      const beyond = up ? one > number * (1 + 1e-9) : one < number * (1 - 1e-9);
      if (beyond && found.length < count) found.push(one);
    }
  }
  return found;
};

/** The preferred numbers above one, from the next to the `count`th. */
export const preferredAbove = (number: number, count: number): readonly number[] =>
  preferredBeyond(number, count, true);

/** The same below one, from the next down. */
export const preferredBelow = (number: number, count: number): readonly number[] =>
  preferredBeyond(number, count, false);

/** The first of them, for a lever that goes up the series. */
export const upTo =
  (count: number) =>
  (now: number): readonly number[] =>
    preferredAbove(now, count);

/** The same for one that goes down. */
export const downTo =
  (count: number) =>
  (now: number): readonly number[] =>
    preferredBelow(now, count);

/** Round numbers above one, in the unit of the book, about so much of SI apart. */
export const rising =
  (kind: Kind, apart: number, count: number) =>
  (now: number, unit: string): readonly number[] => {
    const step = roundStep(apart / toSi(1, kind, unit));
    const base = Math.floor(now / step + 1e-9);
    return Array.from({ length: count }, (_, i) => Number(((base + i + 1) * step).toPrecision(6)));
  };

/** The same below it, as far as there is something left. */
export const falling =
  (kind: Kind, apart: number, count: number) =>
  (now: number, unit: string): readonly number[] => {
    const step = roundStep(apart / toSi(1, kind, unit));
    const base = Math.ceil(now / step - 1e-9);
    return Array.from({ length: count }, (_, i) => Number(((base - i - 1) * step).toPrecision(6))).filter(
      (number) => number > 0,
    );
  };

/** Whole degrees above what is kept now, in the unit of the book. */
export const warmer = (now: number): readonly number[] =>
  Array.from({ length: 60 }, (_, i) => Math.floor(now) + i + 1);

/** Whole degrees below it. */
export const cooler = (now: number): readonly number[] =>
  Array.from({ length: 60 }, (_, i) => Math.ceil(now) - i - 1);

export interface Steps {
  readonly id: string;
  readonly path: string;
  readonly kind: Kind;
  /** Numbers in the unit in which the book writes the value, from the least change to the greatest. */
  readonly numbers: (now: number, unit: string) => readonly number[];
  readonly otherwise?: { readonly unit: string; readonly number: number };
}

/** A lever that turns one quantity of the book; none where nothing stands there and there is no start. */
export const quantityLever = (
  book: Book,
  { id, path, kind, numbers, otherwise }: Steps,
): readonly UtilityLever[] => {
  const written = writtenAt(book, path, kind, otherwise);
  if (written === undefined || !(written.number > 0)) return [];
  return [
    {
      id,
      path,
      kind,
      steps: () =>
        numbers(written.number, written.unit).map((number) => ({
          patches: [writtenPatch(book, written, number)],
          value: writtenSi(written, number),
          text: writtenText(written, number),
        })),
    },
  ];
};

/** A lever that brings several quantities up to one number, or down to it: what lies beyond stays. */
export const levelLever = (
  book: Book,
  {
    id,
    paths,
    kind,
    numbers,
    down = false,
  }: Pick<Steps, 'id' | 'kind' | 'numbers'> & {
    readonly paths: readonly string[];
    readonly down?: boolean;
  },
): readonly UtilityLever[] => {
  const all = paths.flatMap((path) => writtenAt(book, path, kind) ?? []);
  const sign = down ? -1 : 1;
  const [worst] = all.toSorted((a, b) => sign * (writtenSi(a, a.number) - writtenSi(b, b.number)));
  if (worst === undefined || !(worst.number > 0)) return [];
  return [
    {
      id,
      path: worst.path,
      kind,
      steps: () =>
        numbers(worst.number, worst.unit).map((number) => {
          const value = writtenSi(worst, number);
          return {
            patches: all
              .filter((each) => sign * (value - writtenSi(each, each.number)) > 0)
              .map((each) => writtenPatch(book, { ...each, unit: worst.unit }, number)),
            value,
            text: writtenText(worst, number),
          };
        }),
    },
  ];
};

/** A lever that counts up: one more at a time. */
export const countLever = (
  id: string,
  path: string,
  {
    now,
    most,
    patches,
  }: {
    readonly now: number | undefined;
    readonly most: number;
    /** What goes with the count. */
    readonly patches?: (count: number) => readonly Patch[];
  },
): readonly UtilityLever[] =>
  now === undefined
    ? []
    : [
        {
          id,
          path,
          kind: 'count',
          steps: () =>
            Array.from({ length: Math.max(0, most - now) }, (_, i) => now + i + 1).map((count) => ({
              patches: [{ path, value: count }, ...(patches?.(count) ?? [])],
              value: count,
              text: String(count),
            })),
        },
      ];

/** A lever that has one thing made otherwise. */
export const wordLever = (
  id: string,
  paths: readonly string[],
  value: string | boolean,
  text: string,
): readonly UtilityLever[] => {
  const [first] = paths;
  return first === undefined
    ? []
    : [
        {
          id,
          path: first,
          kind: 'count',
          steps: () => [{ patches: paths.map((path) => ({ path, value })), value: 1, text }],
        },
      ];
};
