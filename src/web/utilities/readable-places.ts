import { type Book, fieldAt, pointerOf, stepsOf, valueAt } from '../../book/index.ts';
import type { Assessment } from '../../floor/assessment.ts';
import { openQuestions } from '../../floor/questions/index.ts';

/** A place of a floor that can be read with an instrument, or that is asked. */
export interface ReadablePlace {
  /** Place in the book. */
  readonly path: string;
  /** Place within the floor, as a record names it. */
  readonly of: string;
  /** It has no value yet. */
  readonly asked: boolean;
}

/** What a record can name: no place behind the last of a list. */
const nameable = /^[A-Za-z0-9]+(\/[A-Za-z0-9]+)*$/;

const leaves: ReadonlySet<string> = new Set(['quantity', 'number', 'word', 'text']);

const quantitiesIn = (value: unknown, path: string): readonly string[] => {
  if (fieldAt(path)?.is === 'quantity') return [path];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) =>
    quantitiesIn(inner, pointerOf([...stepsOf(path), key])),
  );
};

/**
 * The quantities of a floor that have a value, and the places that are asked of it.
 *
 * Returns  in the order of the book, what is asked behind it by what its answer would settle
 */
export const readablePlaces = (
  book: Book,
  assessment: Assessment,
  floorTag: string,
): readonly ReadablePlace[] => {
  const index = (book.floors ?? []).findIndex(({ tag }) => tag === floorTag);
  if (index < 0) return [];
  const floor = `/floors/${index}`;
  const known = quantitiesIn(valueAt(book, floor), floor);
  const asked = openQuestions(book, assessment, floorTag)
    .map(({ path }) => path)
    .filter((path) => path.startsWith(`${floor}/`) && !known.includes(path))
    .filter((path) => leaves.has(fieldAt(path)?.is ?? ''));
  const place = (path: string, isAsked: boolean): ReadablePlace => ({
    path,
    of: path.slice(floor.length + 1),
    asked: isAsked,
  });
  return [...known.map((path) => place(path, false)), ...asked.map((path) => place(path, true))].filter(
    ({ of }) => nameable.test(of),
  );
};
