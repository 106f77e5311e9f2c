import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { FastifyInstance } from 'fastify';
import { openSqliteStore } from '../../store/sqlite-store.ts';
import type { Store } from '../../store/store.ts';
import { makeServer } from '../make-server.ts';

/** A server over a store that was filled, and the end of both. */
export interface ServerOverStore {
  readonly store: Store;
  readonly server: FastifyInstance;
  readonly end: () => Promise<void>;
}

/** A server that answers from within the test, over a store in a folder of its own. */
export const serverOverStore = async (
  at: string,
  fill: (store: Store) => Promise<void>,
): Promise<ServerOverStore> => {
  const folder = mkdtempSync(join(tmpdir(), 'server-over-store-'));
  const store = await openSqliteStore(join(folder, 'books.sqlite'));
  await fill(store);
  const server = await makeServer({
    store,
    now: () => at,
    makeId: () => 'made-here',
    pages: join(folder, 'web'),
    kept: folder,
    version: '0.0.0',
    allowHosts: new Set(),
    onFault: (cause) => {
      throw cause;
    },
  });
  return {
    store,
    server,
    end: async () => {
      await server.close();
      await store.close();
      rmSync(folder, { recursive: true, force: true });
    },
  };
};
