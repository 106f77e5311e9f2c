import type { Book } from '../../../book/index.ts';
import type { Calculation } from '../calculation.ts';
import { type ZoneAt, zonesOf } from '../heat/zones-of.ts';
import type { Known } from '../known.ts';
import { flowOfAll } from './flow-of-all.ts';

type TieIn = NonNullable<NonNullable<Book['line']>['tieIns']>[number];

/** A tie-in point with its place in the book. */
export interface TieInAt {
  readonly tieIn: TieIn;
  readonly path: string;
}

export const tieInsOf = (book: Book, kind: TieIn['kind']): readonly TieInAt[] =>
  (book.line?.tieIns ?? []).flatMap((tieIn, i) =>
    tieIn.kind === kind ? [{ tieIn, path: `/line/tieIns/${i}` }] : [],
  );

/** Zones that a tie-in feeds with fresh water; the first cold one feeds all that name none. */
export const zonesFedBy = (book: Book, { tieIn }: TieInAt): readonly ZoneAt[] => {
  const first = tieInsOf(book, 'water')[0]?.tieIn.tag;
  return zonesOf(book).filter(
    ({ zone }) =>
      zone.from === undefined &&
      zone.medium !== 'air' &&
      zone.medium !== 'none' &&
      zone.medium !== 'steam' &&
      (zone.tieIn ?? first) === tieIn.tag,
  );
};

/** Fresh water of all zones that a tie-in feeds, as it flows while the line runs. */
export const waterDraw = (c: Calculation, at: TieInAt): Known | undefined =>
  c.once(`waterDraw ${at.path}`, (c) => {
    const zones = zonesFedBy(c.book, at).filter(
      // a bath without a fresh flow is filled when the line stands
      ({ zone }) => zone.flow !== undefined || zone.medium === 'water' || zone.medium === 'recovered water',
    );
    const said = c.number(`${at.path}/flow`, 'volumeFlow');
    if (zones.length === 0) return said ?? c.needed(`${at.path}/flow`, 'volumeFlow');
    const flows = zones.map(({ path }) => c.needed(`${path}/flow`, 'volumeFlow'));
    return flowOfAll(c, flows);
  });
