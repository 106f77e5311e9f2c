import type { Edit } from './page-state.ts';

/** What one tab keeps in the browser so that neither a reload nor a lost server loses a word. */
export interface KeptEdits {
  readonly revision: number;
  readonly waiting: readonly Edit[];
  readonly done: readonly Edit[];
  readonly undone: readonly Edit[];
  readonly typing?: { readonly path: string; readonly text: string };
}

/** The part of the browser's storage that this page uses. */
export interface Keep {
  readonly read: (book: string) => KeptEdits | undefined;
  readonly write: (book: string, kept: KeptEdits) => void;
  /** Edits that a tab which is gone left unsaved; each is handed out once. */
  readonly adopt: (book: string) => Promise<readonly KeptEdits[]>;
}

const isKept = (value: unknown): value is KeptEdits =>
  typeof value === 'object' &&
  value !== null &&
  typeof (value as KeptEdits).revision === 'number' &&
  Array.isArray((value as KeptEdits).waiting) &&
  Array.isArray((value as KeptEdits).done) &&
  Array.isArray((value as KeptEdits).undone);

const parse = (text: string | null): KeptEdits | undefined => {
  if (text === null) return undefined;
  try {
    const value: unknown = JSON.parse(text);
    return isKept(value) ? value : undefined;
  } catch {
    // another program wrote here, or a write was cut: nothing that could be used
    return undefined;
  }
};

const prefix = 'twinfloor';
const lockOf = (tab: string) => `${prefix}-tab-${tab}`;

export interface BrowserPorts {
  readonly local: Storage;
  readonly session: Storage;
  readonly locks: LockManager | undefined;
  readonly newTab: () => string;
}

/**
 * Keeps edits in local storage under a name of this tab, which session storage remembers over a reload.
 * A duplicated tab copies session storage too: whoever does not get the tab's lock takes a new name.
 */
export const keepInBrowser = async ({ local, session, locks, newTab }: BrowserPorts): Promise<Keep> => {
  const hold = (name: string): Promise<boolean> =>
    locks === undefined
      ? Promise.resolve(true)
      : new Promise((resolve) => {
          const held = locks.request(lockOf(name), { ifAvailable: true }, (lock) => {
            resolve(lock !== null);
            // held for as long as the tab lives
            return lock === null ? undefined : new Promise<void>(() => undefined);
          });
          held.catch(() => resolve(true));
        });
  let tab = session.getItem(`${prefix}-tab`) ?? newTab();
  if (!(await hold(tab))) {
    tab = newTab();
    await hold(tab);
  }
  session.setItem(`${prefix}-tab`, tab);
  const keyOf = (book: string, name: string) => `${prefix}/${book}/${name}`;
  return {
    read: (book) => parse(local.getItem(keyOf(book, tab))),
    write: (book, kept) => {
      try {
        local.setItem(keyOf(book, tab), JSON.stringify(kept));
      } catch {
        // storage full or forbidden: the page still works, and the save state says what is not saved
      }
    },
    adopt: async (book) => {
      if (locks === undefined) return [];
      const living = new Set((await locks.query()).held?.map((lock) => lock.name));
      const keys = Array.from({ length: local.length }, (_, i) => local.key(i) ?? '');
      return keys.flatMap((key) => {
        const [, id, name] = key.split('/');
        if (!key.startsWith(`${prefix}/`) || id !== book || name === undefined || name === tab) return [];
        if (living.has(lockOf(name))) return [];
        const kept = parse(local.getItem(key));
        local.removeItem(key);
        return kept === undefined || kept.waiting.length === 0 ? [] : [kept];
      });
    },
  };
};
