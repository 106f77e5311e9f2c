import type { Page } from '../state/page.ts';
import type { Edit } from '../state/page-state.ts';
import { turnedEdit } from '../state/rebased-edit.ts';
import { withEdit } from './keep-edit.ts';
import { keepUnsaved } from './keep-unsaved.ts';
import { saveEdits } from './save-edits.ts';

/** An edit that goes the other way. */
const turned = (page: Page, edit: Edit): Edit => ({
  ...turnedEdit(edit),
  reason: page.words.say('edit.undone', { reason: edit.reason }),
});

/** Takes the last edit back, as one more revision: nothing that was saved is ever erased. */
export const undoEdit = (page: Page): void => {
  const state = page.state.get();
  const edit = state.done.at(-1);
  if (edit === undefined) return;
  const next = withEdit(state, turned(page, edit));
  const done = state.done.slice(0, -1);
  // a place that is gone since cannot be put back; the step is dropped so that the one before can be reached
  if (next === undefined) page.state.set({ ...state, done });
  else page.state.set({ ...next, done, undone: [...state.undone, edit] });
  keepUnsaved(page);
  void saveEdits(page);
};

/** Makes the edit again that was taken back last. */
export const redoEdit = (page: Page): void => {
  const state = page.state.get();
  const edit = state.undone.at(-1);
  if (edit === undefined) return;
  const next = withEdit(state, edit);
  const undone = state.undone.slice(0, -1);
  if (next === undefined) page.state.set({ ...state, undone });
  else page.state.set({ ...next, undone, done: [...state.done, edit] });
  keepUnsaved(page);
  void saveEdits(page);
};
