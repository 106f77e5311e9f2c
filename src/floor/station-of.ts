import type { Book, Station } from '../book/index.ts';

type Of<K extends Station['kind']> = Extract<Station, { kind: K }>;

export interface Located<T> {
  readonly station: T;
  readonly path: string;
}

/** The first station of a kind, with its place in the book. */
export const stationOf = <K extends Station['kind']>(book: Book, kind: K): Located<Of<K>> | undefined => {
  const stations = book.line?.stations ?? [];
  const index = stations.findIndex((station) => station.kind === kind);
  return index < 0 ? undefined : { station: stations[index] as Of<K>, path: `/line/stations/${index}` };
};
