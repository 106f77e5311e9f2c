/** Files that this browser keeps until the server has them, by name. */
export interface KeptBlobs {
  /** Gives back whether it is kept: a full or forbidden storage keeps nothing. */
  readonly put: (name: string, blob: Blob) => Promise<boolean>;
  readonly get: (name: string) => Promise<Blob | undefined>;
  readonly remove: (name: string) => Promise<void>;
  readonly names: () => Promise<readonly string[]>;
}

const shelf = 'files';

const opened = (factory: IDBFactory): Promise<IDBDatabase> =>
  new Promise((resolve, reject) => {
    const asked = factory.open('twinfloor-files', 1);
    asked.onupgradeneeded = () => void asked.result.createObjectStore(shelf);
    asked.onsuccess = () => resolve(asked.result);
    asked.onerror = () => reject(asked.error);
    asked.onblocked = () => reject(new Error('another tab holds an older form of the storage'));
  });

/** Resolves when the browser says that the change is on its disk. */
const done = <T>(
  database: IDBDatabase,
  mode: IDBTransactionMode,
  work: (files: IDBObjectStore) => IDBRequest<T>,
): Promise<T> =>
  new Promise((resolve, reject) => {
    // strict: else the browser may say so before the disk has it
    const transaction = database.transaction(shelf, mode, { durability: 'strict' });
    const asked = work(transaction.objectStore(shelf));
    transaction.oncomplete = () => resolve(asked.result);
    transaction.onabort = () => reject(transaction.error);
    transaction.onerror = () => reject(transaction.error);
  });

/**
 * Keeps files in the browser's own database. The bytes are kept, not the handle: the file that a camera made may be
 * gone at the next start.
 */
export const keepBlobs = (factory: IDBFactory | undefined): KeptBlobs => {
  const loose = new Map<string, Blob>();
  const database = factory === undefined ? undefined : opened(factory);
  // told where it is asked for; unheard it would end as a fault of the page
  database?.catch(() => undefined);
  const tried = async <T>(
    mode: IDBTransactionMode,
    work: (files: IDBObjectStore) => IDBRequest<T>,
  ): Promise<T | undefined> => {
    try {
      return database === undefined ? undefined : await done(await database, mode, work);
    } catch {
      // storage full or forbidden
      return undefined;
    }
  };
  return {
    put: async (name, blob) => {
      const kept = { bytes: await blob.arrayBuffer(), type: blob.type };
      const key = await tried('readwrite', (files) => files.put(kept, name));
      // in this page at least: it can still be sent while it is open
      if (key === undefined) loose.set(name, new Blob([kept.bytes], { type: kept.type }));
      return key !== undefined;
    },
    get: async (name) => {
      const held = loose.get(name);
      if (held !== undefined) return held;
      const kept: unknown = await tried('readonly', (files) => files.get(name));
      const { bytes, type } = (kept ?? {}) as { readonly bytes?: unknown; readonly type?: unknown };
      return bytes instanceof ArrayBuffer
        ? new Blob([bytes], { type: typeof type === 'string' ? type : '' })
        : undefined;
    },
    remove: async (name) => {
      loose.delete(name);
      await tried('readwrite', (files) => files.delete(name));
    },
    names: async () => {
      const kept = (await tried('readonly', (files) => files.getAllKeys())) ?? [];
      return [...new Set([...kept.map(String), ...loose.keys()])];
    },
  };
};
