import { patchBook, readBook } from '../../book/index.ts';
import { facingFloors } from '../state/facing-floors.ts';
import type { Page } from '../state/page.ts';
import { type Edit, emptyPage, type PageState } from '../state/page-state.ts';
import { withShown } from '../state/shown-book.ts';
import { withEdit } from './keep-edit.ts';
import { saveEdits } from './save-edits.ts';
import { typeValue } from './type-value.ts';

const patience = 1500;

const idOfNewest = async (page: Page): Promise<string | 'absent' | 'unreachable'> => {
  const reply = await page.client('listBooks', {});
  if (!reply.ok) return 'unreachable';
  const [newest] = [...reply.value].sort((a, b) => b.savedAt.localeCompare(a.savedAt));
  return newest?.id ?? 'absent';
};

/** The edits that were waiting when the tab closed, laid over the newest revision again. */
const withWaiting = (state: PageState, edits: readonly Edit[]): PageState =>
  edits.reduce((at, edit) => withEdit(at, edit) ?? at, state);

/** Opens a book, or the one that was saved last, with everything that this browser still keeps of it. */
export const loadBook = async (page: Page, wanted?: string): Promise<void> => {
  const first = page.state.get();
  const fresh: PageState = { ...emptyPage, units: first.units };
  page.state.set(fresh);
  const again = (): void => {
    page.state.set({ ...fresh, load: 'unreachable' });
    page.later(() => {
      if (page.state.get().load === 'unreachable') void loadBook(page, wanted);
    }, patience);
  };
  const id = wanted ?? (await idOfNewest(page));
  if (id === 'unreachable') return again();
  if (id === 'absent') return page.state.set({ ...fresh, load: 'absent' });
  const reply = await page.client('readBook', { params: { id } });
  if (!reply.ok) {
    if (reply.reached && reply.status < 500) return page.state.set({ ...fresh, load: 'absent' });
    return again();
  }
  const book = readBook(reply.value.text);
  if (!book.ok) return page.state.set({ ...fresh, id, load: 'unreadable', problems: book.problems });
  const kept = page.keep.read(id);
  const orphans = await page.keep.adopt(id);
  let state = withShown({ ...fresh, load: 'ready', id, revision: reply.value.number, book: book.value });
  if (kept !== undefined) state = { ...state, done: kept.done, undone: kept.undone };
  const waiting = [...(kept?.waiting ?? []), ...orphans.flatMap((orphan) => orphan.waiting)];
  state = withWaiting(state, waiting);
  const facing = state.assessment === undefined ? state.facing : facingFloors(state.assessment, first.facing);
  page.state.set({ ...state, facing });
  // a text that was being written when the tab closed; its path may be gone since
  if (kept?.typing !== undefined && patchBook(book.value, []).ok)
    typeValue(page, kept.typing.path, kept.typing.text);
  await saveEdits(page);
};
