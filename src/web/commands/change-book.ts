import { type Patch, patchBook } from '../../book/index.ts';
import type { Problem } from '../../quantity/problem.ts';
import { followedPath } from '../state/followed-path.ts';
import type { Page } from '../state/page.ts';
import { inversePatches } from './inverse-patches.ts';
import { keepEdit } from './keep-edit.ts';
import { keepValue, typeValue } from './type-value.ts';

/**
 * Changes the book in one step that can be undone. What would break the book is not done, and its problems are
 * given back to be told at the place.
 */
export const changeBook = (page: Page, reason: string, forward: readonly Patch[]): readonly Problem[] => {
  // what is just being written is kept first; what does not read yet stays at its thing
  keepValue(page);
  const { book, typing } = page.state.get();
  if (book === undefined) return [];
  const patched = patchBook(book, forward);
  if (!patched.ok) return patched.problems;
  keepEdit(page, { reason, forward, back: inversePatches(book, forward) });
  const path = typing && followedPath(typing.path, book, patched.value);
  if (typing !== undefined && path !== undefined) typeValue(page, path, typing.text);
  return [];
};
