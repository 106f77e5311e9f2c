import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { openSqliteStore } from './sqlite-store.ts';
import { storeContract } from './testing/contract.ts';

storeContract('SQLite', async () => {
  const folder = await mkdtemp(join(tmpdir(), 'twinfloor-store-'));
  return {
    open: () => openSqliteStore(join(folder, 'book.db')),
    remove: () => rm(folder, { recursive: true, force: true }),
  };
});
