import type { Book, Station } from '../../../book/index.ts';

export type Washer = Extract<Station, { kind: 'washer' }>;
export type Zone = NonNullable<Washer['zones']>[number];

/** A wash zone with its place in the book. */
export interface ZoneAt {
  readonly zone: Zone;
  readonly path: string;
  /** Its number among the zones of its washer. */
  readonly index: number;
  readonly washer: Washer;
  readonly washerPath: string;
}

/** All wash zones of the line in the order in which bottles pass. */
export const zonesOf = (book: Book): readonly ZoneAt[] =>
  (book.line?.stations ?? []).flatMap((station, s) =>
    station.kind === 'washer'
      ? (station.zones ?? []).map((zone, index) => ({
          zone,
          path: `/line/stations/${s}/zones/${index}`,
          index,
          washer: station,
          washerPath: `/line/stations/${s}`,
        }))
      : [],
  );

/** The zones of the same washer, this one among them. */
export const zonesBeside = (book: Book, { washerPath }: ZoneAt): readonly ZoneAt[] =>
  zonesOf(book).filter((each) => each.washerPath === washerPath);
