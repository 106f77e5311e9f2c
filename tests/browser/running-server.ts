import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { serve } from '../../src/server/serve.ts';

/** A real server on a data folder of its own, which can be ended and started again at the same address. */
export interface RunningServer {
  readonly address: () => string;
  readonly end: () => Promise<void>;
  readonly startAgain: () => Promise<void>;
  readonly remove: () => Promise<void>;
  /** Puts another book into the store and gives its id. */
  readonly addBook: (text: string) => Promise<string>;
}

export const projectRoot = join(import.meta.dirname, '../..');

export const startServer = async (): Promise<RunningServer> => {
  const data = mkdtempSync(join(tmpdir(), 'twinfloor-page-'));
  const start = async (port: number) => {
    // a build that stands elsewhere can be tried too
    const root = process.env.TWINFLOOR_BUILT ?? projectRoot;
    const served = await serve({ host: '127.0.0.1', port, data, allowHosts: [], root });
    if (!served.ok) throw new Error(JSON.stringify(served.problems));
    return served.value;
  };
  let running: Awaited<ReturnType<typeof start>> | undefined = await start(0);
  const { address } = running;
  const port = Number(new URL(address).port);
  const end = async (): Promise<void> => {
    await running?.close();
    running = undefined;
  };
  return {
    address: () => address,
    end,
    startAgain: async () => {
      running = await start(port);
    },
    remove: async () => {
      await end();
      rmSync(data, { recursive: true, force: true });
    },
    addBook: async (text) => {
      const reply = await fetch(`${address}api/books`, {
        method: 'POST',
        headers: { 'content-type': 'application/json', origin: address.replace(/\/$/, '') },
        body: JSON.stringify({ text }),
      });
      const body = (await reply.json()) as { book?: string };
      if (body.book === undefined) throw new Error(`not taken: ${JSON.stringify(body)}`);
      return body.book;
    },
  };
};
