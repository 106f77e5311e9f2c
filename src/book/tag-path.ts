import { pointerOf } from './pointer.ts';
import type { Thing } from './schema/tag.ts';
import { walk } from './walk.ts';

/** Where a tag stands, and on what. */
export interface TagPlace {
  readonly tag: string;
  readonly path: string;
  readonly thing: Thing;
}

/**
 * Every tag of a book with the thing that it stands on, in the order of the book.
 *
 * Cost     O(size of the book)
 */
export const tagsOf = (book: unknown): readonly TagPlace[] => {
  const places: TagPlace[] = [];
  walk(book, {
    leaf: (value, form, steps) => {
      if (form.is === 'text' && form.tag !== undefined && 'names' in form.tag && typeof value === 'string') {
        places.push({ tag: value, path: pointerOf(steps.slice(0, -1)), thing: form.tag.names });
      }
    },
  });
  return places;
};

/**
 * The path of the thing that has a tag.
 *
 * Cost     O(size of the book)
 */
export const tagPath = (book: unknown, tag: string): string | undefined =>
  tagsOf(book).find((place) => place.tag === tag)?.path;
