import { patchBook } from '../../book/index.ts';
import type { Page } from '../state/page.ts';
import type { Edit, PageState } from '../state/page-state.ts';
import { without, withShown } from '../state/shown-book.ts';
import { keepUnsaved } from './keep-unsaved.ts';
import { saveEdits } from './save-edits.ts';

/** The state with an edit applied to the book, and the trial, if one is on, laid over it anew. */
export const withEdit = (state: PageState, edit: Edit): PageState | undefined => {
  if (state.book === undefined) return undefined;
  const patched = patchBook(state.book, edit.forward);
  if (!patched.ok) return undefined;
  const next: PageState = {
    ...without(state, 'typing'),
    book: patched.value,
    waiting: [...state.waiting, edit],
  };
  if (next.trial === undefined) return withShown(next);
  const trial = patchBook(patched.value, next.trial.patch);
  return withShown(
    trial.ok ? { ...next, trial: { ...next.trial, book: trial.value } } : without(next, 'trial'),
  );
};

/** Keeps an edit: it can be undone, it is saved as a new revision, and it survives a reload before that. */
export const keepEdit = (page: Page, edit: Edit): void => {
  const next = withEdit(page.state.get(), edit);
  if (next === undefined) return;
  page.state.set({ ...next, done: [...next.done, edit], undone: [] });
  keepUnsaved(page);
  void saveEdits(page);
};
