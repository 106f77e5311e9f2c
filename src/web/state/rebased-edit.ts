import { type Book, type Patch, tryPatches } from '../../book/index.ts';
import { inversePatches } from '../commands/inverse-patches.ts';
import { followedInsertion, followedPath } from './followed-path.ts';
import type { Edit } from './page-state.ts';

/**
 * An edit as it must be made on another state of the book: each of its changes at the thing that it was meant for,
 * wherever that stands now.
 *
 * Symbols  from  the book that the edit was made on;  to  the book that it is to be laid over
 * Returns  undefined where a thing that it changes is gone
 */
export const rebasedEdit = (edit: Edit, from: Book, to: Book): Edit | undefined => {
  let [mine, theirs] = [from, to];
  const forward: Patch[] = [];
  for (const patch of edit.forward) {
    const follow = patch.op === 'insert' ? followedInsertion : followedPath;
    const path = follow(patch.path, mine, theirs);
    if (path === undefined) return undefined;
    const next: Patch = { ...patch, path };
    mine = tryPatches(mine, [patch]);
    theirs = tryPatches(theirs, [next]);
    forward.push(next);
  }
  return { ...edit, forward, back: inversePatches(to, forward) };
};

/** An edit that goes the other way. */
export const turnedEdit = ({ reason, forward, back }: Edit): Edit => ({
  reason,
  forward: [...back].reverse(),
  back: [...forward].reverse(),
});

/** The book before some edits were made on it. */
export const bookBefore = (book: Book, edits: readonly Edit[]): Book =>
  [...edits].reverse().reduce((at, edit) => tryPatches(at, turnedEdit(edit).forward), book);

export interface Rebased {
  readonly edits: readonly Edit[];
  /** Edits of which a thing that they change is gone. */
  readonly lost: readonly Edit[];
}

/** Edits that follow each other, as they must be made on another state of the book, one after the other. */
export const rebasedEdits = (edits: readonly Edit[], from: Book, to: Book): Rebased => {
  let [mine, theirs] = [from, to];
  const made: Edit[] = [];
  const lost: Edit[] = [];
  for (const edit of edits) {
    const next = rebasedEdit(edit, mine, theirs);
    mine = tryPatches(mine, edit.forward);
    if (next === undefined) lost.push(edit);
    else {
      theirs = tryPatches(theirs, next.forward);
      made.push(next);
    }
  }
  return { edits: made, lost };
};

/** What can be undone and redone once the page shows another state of the book than it was made on. */
export const rebasedHistory = (
  { done, undone }: { readonly done: readonly Edit[]; readonly undone: readonly Edit[] },
  from: Book,
  to: Book,
): { readonly done: readonly Edit[]; readonly undone: readonly Edit[] } => ({
  done: rebasedEdits([...done].reverse().map(turnedEdit), from, to)
    .edits.map(turnedEdit)
    .reverse(),
  undone: [...rebasedEdits([...undone].reverse(), from, to).edits].reverse(),
});
