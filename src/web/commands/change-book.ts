import { type Patch, patchBook } from '../../book/index.ts';
import type { Problem } from '../../quantity/problem.ts';
import type { Page } from '../state/page.ts';
import { inversePatches } from './inverse-patches.ts';
import { keepEdit } from './keep-edit.ts';

/**
 * Changes the book in one step that can be undone. What would break the book is not done, and its problems are
 * given back to be told at the place.
 */
export const changeBook = (page: Page, reason: string, forward: readonly Patch[]): readonly Problem[] => {
  const { book } = page.state.get();
  if (book === undefined) return [];
  const patched = patchBook(book, forward);
  if (!patched.ok) return patched.problems;
  keepEdit(page, { reason, forward, back: inversePatches(book, forward) });
  return [];
};
