import type { Book } from '../../book/index.ts';
import type { Kind } from '../../quantity/kinds.ts';
import { seriesFor } from '../remedies/pipe-series.ts';
import { writtenAt, writtenPatch, writtenSi, writtenText } from '../remedies/written-value.ts';
import type { UtilityLever } from './need.ts';

/** Preferred numbers, series R20 of ISO 3; from memory. */
const r20 = [
  1, 1.12, 1.25, 1.4, 1.6, 1.8, 2, 2.24, 2.5, 2.8, 3.15, 3.55, 4, 4.5, 5, 5.6, 6.3, 7.1, 8, 9,
] as const;

/** The preferred numbers above one, from the next to the `count`th. */
export const preferredAbove = (number: number, count: number): readonly number[] => {
  const found: number[] = [];
  let power = 10 ** Math.floor(Math.log10(number));
  while (found.length < count) {
    for (const lead of r20) {
      const one = Number((lead * power).toPrecision(4));
      if (one > number * (1 + 1e-9) && found.length < count) found.push(one);
    }
    power *= 10;
  }
  return found;
};

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

/** The next wider bores that can be bought, for each pipe of a run. */
export const boreLevers = (
  book: Book,
  path: string,
  run: readonly { readonly kind: string; readonly material?: string; readonly name?: string }[],
): readonly UtilityLever[] =>
  run.flatMap((piece, i) => {
    const at = `${path}/${i}/bore`;
    const written = piece.kind === 'pipe' ? writtenAt(book, at, 'length') : undefined;
    if (written === undefined) return [];
    const now = writtenSi(written, written.number);
    return [
      {
        id: 'bore',
        path: at,
        kind: 'length' as const,
        steps: () =>
          seriesFor(piece.material, piece.name)
            .bores.filter(({ bore }) => bore > now * 1.001)
            .map(({ name, bore }) => ({
              patches: [{ path: at, value: `${Number((1000 * bore).toPrecision(5))} mm` }],
              value: bore,
              text: name,
            })),
      },
    ];
  });
