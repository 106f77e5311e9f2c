import type { Book, Patch, RunPiece } from '../../book/index.ts';
import { seriesFor } from '../remedies/pipe-series.ts';
import {
  plainNumber,
  type Written,
  writtenAt,
  writtenPatch,
  writtenSi,
  writtenText,
} from '../remedies/written-value.ts';
import type { UtilityLever } from './need.ts';
import { preferredAbove } from './steps.ts';

/** A piece of a run that can be had wider, as it stands in the book. */
interface Wide {
  readonly piece: RunPiece;
  readonly written: Written;
  /** Bore of a pipe, flow coefficient of a valve, SI. */
  readonly now: number;
}

const wideOf = (
  book: Book,
  path: string,
  run: readonly RunPiece[],
  kind: 'pipe' | 'valve',
): readonly Wide[] =>
  run.flatMap((piece, i): readonly Wide[] => {
    if (piece.kind !== kind) return [];
    const written =
      kind === 'pipe'
        ? writtenAt(book, `${path}/${i}/bore`, 'length')
        : writtenAt(book, `${path}/${i}/kv`, 'flowCoefficient');
    return written === undefined ? [] : [{ piece, written, now: writtenSi(written, written.number) }];
  });

/** Bores that would take the place of a pipe, from a least one on. */
const boresFrom = ({ piece }: Wide, least: number) =>
  seriesFor(piece.kind === 'pipe' ? piece.material : undefined, piece.name).bores.filter(
    ({ bore }) => bore >= least,
  );

const borePatch = ({ written }: Wide, bore: number): Patch => ({
  path: written.path,
  value: `${Number((1000 * bore).toPrecision(5))} mm`,
});

/** A pipe whose bore is meant, but for its last digits. */
const same = 1.001;

/** How many sizes of a valve are tried. */
const valveSizes = 20;

/** Every pipe and valve narrower than a size, brought to it: what a valve passes grows with its area. */
const widened = (
  book: Book,
  pipes: readonly Wide[],
  valves: readonly Wide[],
  least: number,
): readonly Patch[] => {
  const narrowest = Math.min(...pipes.map(({ now }) => now));
  return [
    ...pipes.flatMap((pipe) => {
      const [next] = pipe.now * same < least ? boresFrom(pipe, least / same) : [];
      return next === undefined ? [] : [borePatch(pipe, next.bore)];
    }),
    ...valves.map(({ written }) => {
      const [next] = preferredAbove((written.number * (least / narrowest) ** 2) / same, 1);
      return writtenPatch(book, written, next!);
    }),
  ];
};

/**
 * Wider pieces of a run, one at a time and all together: the next bores that can be bought for each pipe, the next sizes of
 * each valve, and the least size to which all that is narrower is brought.
 */
export const runLevers = (
  book: Book,
  id: string,
  path: string,
  run: readonly RunPiece[],
): readonly UtilityLever[] => {
  const pipes = wideOf(book, path, run, 'pipe');
  const valves = wideOf(book, path, run, 'valve');
  const [narrowest] = pipes.toSorted((a, b) => a.now - b.now);
  const one = (pipe: Wide): UtilityLever => ({
    id,
    path: pipe.written.path,
    kind: 'length',
    steps: () =>
      boresFrom(pipe, pipe.now * same).map(({ name, bore }) => ({
        patches: [borePatch(pipe, bore)],
        value: bore,
        text: name,
      })),
  });
  const valve = ({ written }: Wide): UtilityLever => ({
    id: 'pieceKv',
    path: written.path,
    kind: 'flowCoefficient',
    steps: () =>
      preferredAbove(written.number, valveSizes).map((number) => ({
        patches: [writtenPatch(book, written, number)],
        value: writtenSi(written, number),
        text: writtenText(written, number),
      })),
  });
  const all = (least: Wide): UtilityLever => ({
    id: 'runBore',
    path: least.written.path,
    kind: 'length',
    steps: () =>
      boresFrom(least, least.now * same).map(({ name, bore }) => ({
        patches: widened(book, pipes, valves, bore),
        value: bore,
        text: `${name} (${plainNumber(1000 * bore)} mm)`,
      })),
  });
  return [
    ...pipes.map(one),
    ...valves.map(valve),
    ...(narrowest !== undefined && pipes.length + valves.length > 1 ? [all(narrowest)] : []),
  ];
};
