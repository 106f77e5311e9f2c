import type { Book } from '../book/index.ts';
import type { Assessment, FloorAssessment } from './assessment.ts';
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
 * Floors of an earlier assessment that hold for a book, by their index.
 *
 * Method   a floor rests on itself, on the air of the one where the line was built and timed, and on all of the book
 *          besides floors; what is the very same part, not only equal, can't have changed
 * Returns  gives the floor's assessment, or undefined where it must be made anew
 * Assumes  parts of a book are never changed in place
 */
export const stillHolds = (
  book: Book,
  format: string,
  earlier: Earlier | undefined,
): ((floor: number) => FloorAssessment | undefined) => {
  const none = (): undefined => undefined;
  if (earlier === undefined || earlier.assessment.format !== format) return none;
  const [now, before] = [book.floors ?? [], earlier.book.floors ?? []];
  const built = builtOn(book);
  if (!sameBesidesFloors(book, earlier.book) || built !== builtOn(earlier.book)) return none;
  if (timedIn.some((part) => now[built]?.[part] !== before[built]?.[part])) return none;
  return (floor) => (now[floor] === before[floor] ? earlier.assessment.floors[floor] : undefined);
};
