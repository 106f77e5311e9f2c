import { placeInList, stepsOf } from './pointer.ts';

/**
 * What stands at a place of a book; undefined where nothing does.
 *
 * Symbols  book  any data;  path  JSON Pointer by index, `/floors/1/supply/run/0/bore`
 * Cost     O(length of the path)
 */
export const valueAt = (book: unknown, path: string): unknown => {
  let at: unknown = book;
  for (const step of stepsOf(path)) {
    if (Array.isArray(at)) {
      const index = placeInList(step);
      at = index === undefined ? undefined : at[index];
    } else if (typeof at === 'object' && at !== null && Object.hasOwn(at, step)) {
      at = (at as Record<string, unknown>)[step];
    } else return undefined;
  }
  return at;
};
