import type { Book } from '../../../book/index.ts';
import type { Kind } from '../../../quantity/kinds.ts';
import type { Calculation } from '../calculation.ts';
import type { Known } from '../known.ts';

type Room = NonNullable<NonNullable<Book['floors']>[number]['room']>;
export type RoutePiece = NonNullable<Room['route']>[number];
export type PieceKind = NonNullable<RoutePiece['kind']>;

/** A piece of the way in that has a figure, or should have one. */
export interface PieceFigure {
  readonly piece: RoutePiece;
  readonly path: string;
  readonly known: Known | undefined;
}

type Field = 'width' | 'height' | 'mass' | 'bearing';

const kinds: Readonly<Record<Field, Kind>> = {
  width: 'length',
  height: 'length',
  mass: 'mass',
  bearing: 'pressureDifference',
};

/** Kinds of pieces that can't be judged without the figure; of the others it counts where it is said. */
const wanted: Readonly<Record<Field, readonly PieceKind[]>> = {
  width: ['door', 'corridor', 'turn', 'lift'],
  height: ['door', 'lift'],
  mass: ['lift', 'crane'],
  bearing: [],
};

/** Pieces of the way in with one figure of theirs; the places of those that lack it are missed. */
export const piecesWith = (c: Calculation, field: Field): readonly PieceFigure[] =>
  (c.book.floors![c.floor]!.room?.route ?? []).flatMap((piece, i): PieceFigure[] => {
    const path = `${c.floorPath}/room/route/${i}`;
    const at = `${path}/${field}`;
    const asked = piece.kind !== undefined && wanted[field].includes(piece.kind);
    if (piece[field] === undefined && !asked) return [];
    return [{ piece, path, known: asked ? c.needed(at, kinds[field]) : c.number(at, kinds[field]) }];
  });

/** The piece with the least figure, and whether any that should have one has none. */
export const narrowest = (
  pieces: readonly PieceFigure[],
): { readonly least: PieceFigure | undefined; readonly complete: boolean } => ({
  least: pieces.reduce<PieceFigure | undefined>(
    (a, b) => (b.known !== undefined && (a?.known === undefined || b.known.value < a.known.value) ? b : a),
    undefined,
  ),
  complete: pieces.length > 0 && pieces.every(({ known }) => known !== undefined),
});

/** As people on the floor call a piece. */
export const pieceName = ({ name, tag, kind }: RoutePiece): string | undefined => name ?? tag ?? kind;
