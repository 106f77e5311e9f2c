import { type Book, readBook } from '../../book/index.ts';
import type { Page } from '../state/page.ts';
import type { Edit, PageState } from '../state/page-state.ts';
import { bookBefore, rebasedEdits, rebasedHistory } from '../state/rebased-edit.ts';
import { without, withShown } from '../state/shown-book.ts';
import { withEdit } from './keep-edit.ts';
import { keepUnsaved } from './keep-unsaved.ts';
import { saveEdits } from './save-edits.ts';

/** The page at the newest revision, without the edits that wait. */
const atNewest = async (page: Page): Promise<(PageState & { readonly book: Book }) | undefined> => {
  const state = page.state.get();
  const reply = await page.client('readBook', { params: { id: state.id } });
  if (!reply.ok) return undefined;
  const book = readBook(reply.value.text);
  if (!book.ok) return undefined;
  const clean = without(page.state.get(), 'typing', 'trial');
  const next: PageState = {
    ...clean,
    book: book.value,
    revision: reply.value.number,
    waiting: [],
    saving: { kind: 'saved' },
  };
  return { ...withShown(next), book: book.value };
};

/** Edits whose thing is gone are told, with what they would have written: nobody's words are lost. */
const withLost = (state: PageState, lost: readonly Edit[]): PageState =>
  lost.length === 0
    ? state
    : { ...state, lost: [...(state.lost ?? []), ...lost.map(({ reason }) => reason)] };

/** Lays the edits that wait over the newest revision, each at its thing wherever that stands now, and saves them. */
export const putMineOnTop = async (page: Page): Promise<void> => {
  const { book: mine, waiting, done, undone } = page.state.get();
  const newest = await atNewest(page);
  if (newest === undefined || mine === undefined) return;
  const { edits, lost } = rebasedEdits(waiting, bookBefore(mine, waiting), newest.book);
  const unfit: Edit[] = [...lost];
  const merged = edits.reduce<PageState>((state, edit) => {
    const next = withEdit(state, edit);
    if (next === undefined) unfit.push(edit);
    return next ?? state;
  }, newest);
  const fit = done.filter((edit) => !unfit.includes(edit));
  const history = rebasedHistory({ done: fit, undone }, mine, merged.book ?? newest.book);
  page.state.set(withLost({ ...merged, ...history }, unfit));
  keepUnsaved(page);
  await saveEdits(page);
};

/** Shows the newest revision; the edits that waited move to what can be redone, so none is lost. */
export const takeTheirs = async (page: Page): Promise<void> => {
  const { book: mine, waiting, done } = page.state.get();
  const newest = await atNewest(page);
  if (newest === undefined || mine === undefined) return;
  const base = bookBefore(mine, waiting);
  const { edits, lost } = rebasedEdits(waiting, base, newest.book);
  const older = done.filter((edit) => !waiting.includes(edit));
  const history = rebasedHistory({ done: older, undone: [] }, base, newest.book);
  page.state.set(withLost({ ...newest, done: history.done, undone: [...edits].reverse() }, lost));
  keepUnsaved(page);
};

/** Follows another tab: where nothing of ours waits, a newer revision is simply shown. */
export const followNewest = async (page: Page): Promise<void> => {
  const { id, revision, load, waiting, typing, saving, book: mine, done, undone } = page.state.get();
  if (load !== 'ready' || waiting.length > 0 || typing !== undefined || saving.kind !== 'saved') return;
  const reply = await page.client('readBook', { params: { id } });
  if (!reply.ok || reply.value.number <= revision) return;
  if (page.state.get().revision !== revision || mine === undefined) return;
  const newest = await atNewest(page);
  if (newest === undefined) return;
  page.state.set({ ...newest, ...rebasedHistory({ done, undone }, mine, newest.book) });
};

/** The person has read what no longer fits. */
export const forgetLost = (page: Page): void => page.state.set(without(page.state.get(), 'lost'));
