import { readBook } from '../../book/index.ts';
import type { Page } from '../state/page.ts';
import type { Edit, PageState } from '../state/page-state.ts';
import { without, withShown } from '../state/shown-book.ts';
import { withEdit } from './keep-edit.ts';
import { keepUnsaved } from './keep-unsaved.ts';
import { saveEdits } from './save-edits.ts';

/** The page at the newest revision, without the edits that wait. */
const atNewest = async (page: Page): Promise<PageState | undefined> => {
  const state = page.state.get();
  const reply = await page.client('readBook', { params: { id: state.id } });
  if (!reply.ok) return undefined;
  const book = readBook(reply.value.text);
  if (!book.ok) return undefined;
  const clean = without(page.state.get(), 'typing', 'trial');
  return withShown({
    ...clean,
    book: book.value,
    revision: reply.value.number,
    waiting: [],
    saving: { kind: 'saved' },
  });
};

/** Lays the edits that wait over the newest revision and saves them; those that no longer fit can be redone. */
export const putMineOnTop = async (page: Page): Promise<void> => {
  const mine = page.state.get().waiting;
  const newest = await atNewest(page);
  if (newest === undefined) return;
  const lost: Edit[] = [];
  const merged = mine.reduce((state, edit) => {
    const next = withEdit(state, edit);
    if (next === undefined) lost.push(edit);
    return next ?? state;
  }, newest);
  page.state.set({ ...merged, undone: [...merged.undone, ...lost] });
  keepUnsaved(page);
  await saveEdits(page);
};

/** Shows the newest revision; the edits that waited move to what can be redone, so none is lost. */
export const takeTheirs = async (page: Page): Promise<void> => {
  const mine = page.state.get().waiting;
  const newest = await atNewest(page);
  if (newest === undefined) return;
  const done = newest.done.filter((edit) => !mine.includes(edit));
  page.state.set({ ...newest, done, undone: [...newest.undone, ...[...mine].reverse()] });
  keepUnsaved(page);
};

/** Follows another tab: where nothing of ours waits, a newer revision is simply shown. */
export const followNewest = async (page: Page): Promise<void> => {
  const { id, revision, load, waiting, typing, saving } = page.state.get();
  if (load !== 'ready' || waiting.length > 0 || typing !== undefined || saving.kind !== 'saved') return;
  const reply = await page.client('readBook', { params: { id } });
  if (!reply.ok || reply.value.number <= revision) return;
  if (page.state.get().revision !== revision) return;
  const newest = await atNewest(page);
  if (newest !== undefined) page.state.set(newest);
};
