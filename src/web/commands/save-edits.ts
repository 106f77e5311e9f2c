import { writeBook } from '../../book/index.ts';
import type { Page } from '../state/page.ts';
import type { PageState, Saving } from '../state/page-state.ts';
import { keepUnsaved } from './keep-unsaved.ts';

/** How long the page waits before it knocks at a server that was gone. */
const patience = 1500;

const set = (page: Page, change: Partial<PageState>): void =>
  page.state.set({ ...page.state.get(), ...change });
const setSaving = (page: Page, saving: Saving): void => set(page, { saving });

/** Sends what waits as one new revision; one call at a time, the newest book wins. */
export const saveEdits = async (page: Page): Promise<void> => {
  const before = page.state.get();
  if (before.book === undefined || before.waiting.length === 0) return;
  if (before.saving.kind === 'saving' || before.saving.kind === 'conflict') return;
  setSaving(page, { kind: 'saving' });
  const sent = before.waiting;
  const reply = await page.client('saveRevision', {
    params: { id: before.id },
    body: {
      text: writeBook(before.book),
      basedOn: before.revision,
      author: page.author,
      reason: sent
        .map((edit) => edit.reason)
        .join('; ')
        .slice(0, 1900),
    },
  });
  if (reply.ok) {
    const now = page.state.get();
    set(page, {
      revision: reply.value.number,
      waiting: now.waiting.slice(sent.length),
      saving: { kind: 'saved' },
    });
    keepUnsaved(page);
    await saveEdits(page);
    return;
  }
  if (reply.reached && reply.status === 409 && reply.failure.newest !== undefined) {
    setSaving(page, { kind: 'conflict', newest: reply.failure.newest });
  } else if (reply.reached && reply.status < 500) {
    setSaving(page, { kind: 'refused', message: reply.failure.message });
  } else {
    setSaving(page, { kind: 'waiting' });
    page.later(() => {
      if (page.state.get().saving.kind === 'waiting') void saveEdits(page);
    }, patience);
  }
  keepUnsaved(page);
};
