import { describe, expect, it } from 'vitest';
import { type BrowserPorts, type KeptEdits, keepInBrowser } from './kept-edits.ts';

const memory = (): Storage => {
  const kept = new Map<string, string>();
  return {
    get length() {
      return kept.size;
    },
    key: (i) => [...kept.keys()][i] ?? null,
    getItem: (key) => kept.get(key) ?? null,
    setItem: (key, value) => void kept.set(key, value),
    removeItem: (key) => void kept.delete(key),
    clear: () => kept.clear(),
  };
};

/** Locks of one browser: a name is held until its tab is gone. */
const lockTable = () => {
  const held = new Set<string>();
  const locks = {
    request: (name: string, _: unknown, use: (lock: unknown) => unknown) => {
      if (held.has(name)) return Promise.resolve(use(null));
      held.add(name);
      return Promise.resolve(use({ name }));
    },
    query: () => Promise.resolve({ held: [...held].map((name) => ({ name })) }),
  } as unknown as LockManager;
  return { locks, close: (tab: string) => held.delete(`twinfloor-tab-${tab}`) };
};

const edit = { reason: 'r', forward: [{ path: '/a', value: 1 }], back: [{ path: '/a', value: 0 }] };
const kept: KeptEdits = { revision: 3, waiting: [edit], done: [edit], undone: [] };

const tab = (name: string, ports: Omit<BrowserPorts, 'newTab'>) =>
  keepInBrowser({ ...ports, newTab: () => name });

describe('what a tab keeps in the browser', () => {
  it('is there again after a reload of the same tab', async () => {
    const [local, session] = [memory(), memory()];
    const { locks, close } = lockTable();
    (await tab('one', { local, session, locks })).write('book', kept);
    close('one');
    expect((await tab('two', { local, session, locks })).read('book')).toEqual(kept);
  });
  it('is not shared with a tab that was duplicated from it', async () => {
    const [local, session] = [memory(), memory()];
    const { locks } = lockTable();
    (await tab('one', { local, session, locks })).write('book', kept);
    // the copy comes with the same session storage while the first tab lives
    expect((await tab('two', { local, session, locks })).read('book')).toBeUndefined();
  });
  it('is adopted once by another tab when its own is gone, and not while it lives', async () => {
    const local = memory();
    const { locks, close } = lockTable();
    (await tab('one', { local, session: memory(), locks })).write('book', kept);
    const other = await tab('two', { local, session: memory(), locks });
    expect(await other.adopt('book')).toEqual([]);
    close('one');
    expect(await other.adopt('another')).toEqual([]);
    expect(await other.adopt('book')).toEqual([kept]);
    expect(await other.adopt('book')).toEqual([]);
  });
  it('is passed over where something else wrote there', async () => {
    const [local, session] = [memory(), memory()];
    local.setItem('twinfloor/book/one', '{"revision":"three"');
    session.setItem('twinfloor-tab', 'one');
    const { locks } = lockTable();
    expect((await tab('two', { local, session, locks })).read('book')).toBeUndefined();
  });
});
