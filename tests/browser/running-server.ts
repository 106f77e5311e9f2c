import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** A real server on a data folder of its own, which can be killed and started again at the same address. */
export interface RunningServer {
  readonly address: () => string;
  /** Kills it, as a power cut would. */
  readonly end: () => Promise<void>;
  readonly startAgain: () => Promise<void>;
  readonly remove: () => Promise<void>;
  /** Puts another book into the store and gives its id. */
  readonly addBook: (text: string) => Promise<string>;
}

export const projectRoot = join(import.meta.dirname, '../..');

const start = async (data: string, port: number): Promise<{ child: ChildProcess; address: string }> => {
  // a build that stands elsewhere can be tried too
  const root = process.env.TWINFLOOR_BUILT ?? projectRoot;
  const program = join(import.meta.dirname, 'server-process.mjs');
  const child = spawn(process.execPath, [program, root, data, String(port)], {
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  const [first] = (await Promise.race([
    once(child.stdout, 'data'),
    once(child, 'exit').then(() => {
      throw new Error('the server did not start');
    }),
  ])) as [Buffer];
  return { child, address: first.toString().trim() };
};

export const startServer = async (): Promise<RunningServer> => {
  const data = mkdtempSync(join(tmpdir(), 'twinfloor-page-'));
  const { child, address } = await start(data, 0);
  let running: ChildProcess | undefined = child;
  const port = Number(new URL(address).port);
  const end = async (): Promise<void> => {
    if (running === undefined) return;
    const gone = once(running, 'exit');
    running.kill('SIGKILL');
    running = undefined;
    await gone;
  };
  return {
    address: () => address,
    end,
    startAgain: async () => {
      running = (await start(data, port)).child;
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
