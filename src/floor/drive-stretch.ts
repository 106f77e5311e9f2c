import type { Book } from '../book/index.ts';
import type { BookReader } from './book-reader.ts';

/** Where the frequency of a drive and that of the floor stand; undefined where its speed does not come from the supply. */
export const drivePlaces = (
  book: Book,
  floorPath: string,
  driveTag: string | undefined,
): { readonly rated: string; readonly here: string } | undefined => {
  const drives = book.line?.drives ?? [];
  const index = drives.findIndex((drive) => drive.tag === driveTag);
  return index < 0 || drives[index]!.inverter === true
    ? undefined
    : { rated: `/line/drives/${index}/frequency`, here: `${floorPath}/power/frequency` };
};

/**
 * Share by which a drive that runs straight on the supply stretches its times on this floor.
 *
 * Method   rated frequency over the floor's: a machine built on 50 Hz moves 1.2 times as fast on 60 Hz
 * Returns  1 where an inverter sets the speed, or either frequency is not known (then noted as assumed)
 */
export const driveStretch = (reader: BookReader, floorPath: string, driveTag: string | undefined): number => {
  const places = drivePlaces(reader.book, floorPath, driveTag);
  if (places === undefined) return 1;
  const rated = reader.number(places.rated, 'frequency');
  const here = reader.number(places.here, 'frequency');
  if (rated !== undefined && here !== undefined && here > 0) return rated / here;
  reader.assume(rated === undefined ? places.rated : places.here);
  return 1;
};
