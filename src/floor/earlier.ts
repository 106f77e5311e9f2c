import type { Book } from '../book/index.ts';
import type { Assessment, FloorAssessment } from './assessment.ts';
import type { ReadBefore } from './book-reader.ts';
import { builtOn } from './built-on.ts';

/** An assessment that was made before, of a book that may share parts with the one at hand. */
export interface Earlier {
  readonly book: Book;
  readonly assessment: Assessment;
}

const sameBesidesFloors = (one: Book, other: Book): boolean => {
  for (const key of Object.keys({ ...one, ...other }) as (keyof Book)[]) {
    if (key !== 'floors' && one[key] !== other[key]) return false;
  }
  return true;
};

/** What another floor rests on of the one where the line was timed: the air that its cylinders had there. */
const timedIn = ['air', 'room'] as const;

/**
 * Floors of a book of which nothing is asked otherwise than in a book like it.
 *
 * Method   a floor rests on itself, on the air of the one where the line was built and timed, and on all of the book
 *          besides floors
 * Assumes  parts of a book are never changed in place: what is the very same part, not only equal, can't have changed
 */
const sameFloorAs = (book: Book, before: Book): ((floor: number) => boolean) => {
  const built = builtOn(book);
  const [now, then] = [book.floors ?? [], before.floors ?? []];
  const same =
    sameBesidesFloors(book, before) &&
    built === builtOn(before) &&
    timedIn.every((part) => now[built]?.[part] === then[built]?.[part]);
  return (floor) => same && now[floor] === then[floor];
};

/**
 * Floors of an earlier assessment that hold for a book, by their index.
 *
 * Returns  gives the floor's assessment, or undefined where it must be made anew
 */
export const stillHolds = (
  book: Book,
  format: string,
  earlier: Earlier | undefined,
): ((floor: number) => FloorAssessment | undefined) => {
  if (earlier === undefined || earlier.assessment.format !== format) return () => undefined;
  const same = sameFloorAs(book, earlier.book);
  return (floor) => (same(floor) ? earlier.assessment.floors[floor] : undefined);
};

/** What was read of its book for an assessment, as long as somebody has that. */
const readings = new WeakMap<Assessment, ReadBefore>();

export const keepReadings = (assessment: Assessment, read: ReadBefore): void =>
  void readings.set(assessment, read);

/** What was read and kept of the book of an earlier assessment, for one of a book like it. */
export const readingsOf = (earlier: Earlier | undefined): ReadBefore | undefined =>
  earlier === undefined ? undefined : readings.get(earlier.assessment);
