import type { Book } from '../../book/index.ts';
import { stationOf } from '../station-of.ts';

/** What a pipe's walls are known by. */
interface Walls {
  readonly material?: unknown;
  readonly wall?: unknown;
  readonly elasticity?: unknown;
}

/** Whether neither its material nor wall and elasticity are said of a pipe. */
export const isUnsaid = ({ material, wall, elasticity }: Walls): boolean =>
  material === undefined && (wall === undefined || elasticity === undefined);

/**
 * Places of the pipes before the lanes of a floor of which neither the material nor wall and elasticity are said: whether
 * they are stiff, and so what their liquid does while lanes close, is taken to be open.
 */
export const unsaidPipes = (book: Book, floor: number): readonly string[] => {
  if ((stationOf(book, 'fill')?.station.lanes ?? []).length === 0) return [];
  const { source, run = [] } = book.floors?.[floor]?.supply ?? {};
  if (source?.kind === 'reading') return [];
  return run.flatMap((piece, i) =>
    piece.kind === 'pipe' && isUnsaid(piece) ? [`/floors/${floor}/supply/run/${i}`] : [],
  );
};
