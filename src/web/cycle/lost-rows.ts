import { type LostRow, lostRows } from '../../floor/shift/index.ts';
import type { LostTime } from '../../line/shift/index.ts';

/** A row of the shift under a name that is the same on every floor. */
export interface KeyedRow extends LostRow {
  readonly key: string;
}

const keyOf = ({ state, station, cause }: LostRow): string =>
  state === 'running' ? 'running' : cause === undefined ? `wait ${station}` : `cause ${cause}`;

export const keyedRows = (minutes: readonly LostTime[], duration: number): readonly KeyedRow[] =>
  lostRows(minutes, duration).map((row) => ({ ...row, key: keyOf(row) }));

/** A row below this share of the shift on every floor stands with the others of its size. */
export const smallShare = 0.002;

/** Keys of the rows that are worth a line of their own on some floor. */
export const toldKeys = (floors: readonly { readonly rows: readonly KeyedRow[] }[]): readonly string[] => [
  ...new Set(
    floors.flatMap(({ rows }) => rows.filter(({ share }) => share >= smallShare).map(({ key }) => key)),
  ),
];
