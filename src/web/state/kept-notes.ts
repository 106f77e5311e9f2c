/** What this browser keeps besides the edits of a book: a form half filled in, what a remedy costs. */
export interface KeptNotes {
  readonly read: (name: string) => unknown;
  /** Keeps a value of plain data; undefined forgets it. */
  readonly write: (name: string, value: unknown) => void;
  /** Tells when another tab has written; gives back how to stop. */
  readonly watch: (name: string, told: () => void) => () => void;
}

export interface NotePorts {
  readonly local: Storage;
  /** Where the browser tells that another tab wrote. */
  readonly changes: EventTarget;
}

const keyOf = (name: string): string => `twinfloor-notes/${name}`;

/** Keeps notes in local storage, one text a name. */
export const keepNotes = ({ local, changes }: NotePorts): KeptNotes => ({
  read: (name) => {
    const text = local.getItem(keyOf(name));
    if (text === null) return undefined;
    try {
      return JSON.parse(text) as unknown;
    } catch {
      // another program wrote here: nothing that could be used
      return undefined;
    }
  },
  write: (name, value) => {
    try {
      if (value === undefined) local.removeItem(keyOf(name));
      else local.setItem(keyOf(name), JSON.stringify(value));
    } catch {
      // storage full or forbidden: the page works on, it only forgets at a reload
    }
  },
  watch: (name, told) => {
    const heard = (event: Event): void => {
      if ((event as StorageEvent).key === keyOf(name)) told();
    };
    changes.addEventListener('storage', heard);
    return () => changes.removeEventListener('storage', heard);
  },
});
