import { patchBook, valueAt } from '../../book/index.ts';
import type { Remedy } from '../../floor/assessment.ts';
import type { Page } from '../state/page.ts';
import { without, withShown } from '../state/shown-book.ts';
import { keepEdit } from './keep-edit.ts';

/** Lays a remedy over the book, unsaved; the whole page follows. */
export const tryRemedy = (page: Page, remedy: Remedy): void => {
  const state = without(page.state.get(), 'typing');
  if (state.book === undefined) return;
  const patched = patchBook(state.book, remedy.patch);
  if (!patched.ok) return;
  const { floor, finding, lever, patch } = remedy;
  const label = page.words.remedyText(state.book, remedy);
  page.state.set(
    withShown({ ...state, trial: { floor, finding, lever, label, patch, book: patched.value } }),
  );
};

/** Takes the trial off again; the book was never touched. */
export const putBack = (page: Page): void => {
  page.state.set(withShown(without(page.state.get(), 'trial', 'typing')));
};

/** Keeps the trial as a new revision that says why, and names the remedy. */
export const keepTrial = (page: Page, why: string): void => {
  const { trial, book } = page.state.get();
  if (trial === undefined || book === undefined) return;
  page.state.set(without(page.state.get(), 'trial', 'typing'));
  keepEdit(page, {
    reason: why === '' ? trial.label : page.words.say('trial.kept', { reason: why, label: trial.label }),
    forward: trial.patch,
    back: [...trial.patch].reverse().map(({ path }) => ({ path, value: valueAt(book, path) })),
  });
};
