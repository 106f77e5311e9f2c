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

interface Host {
  readonly child: ChildProcess;
  /** Sends a line and gives its answer. */
  readonly ask: (line: object) => Promise<string>;
}

const startHost = (): Host => {
  // a build that stands elsewhere can be tried too
  const root = process.env.TWINFLOOR_BUILT ?? projectRoot;
  const program = join(import.meta.dirname, 'server-process.mjs');
  const child = spawn(process.execPath, [program, root], { stdio: ['pipe', 'pipe', 'inherit'] });
  const ended = once(child, 'exit').then(() => {
    throw new Error('the server did not start');
  });
  // who asks hears of it; nobody else has to
  ended.catch(() => undefined);
  const ask = async (line: object): Promise<string> => {
    child.stdin.write(`${JSON.stringify(line)}\n`);
    const [answer] = (await Promise.race([once(child.stdout, 'data'), ended])) as [Buffer];
    return answer.toString().trim();
  };
  return { child, ask };
};

/** A process that has served before is warm: the next test waits for no loading. */
const idle: Host[] = [];

export const startServer = async (): Promise<RunningServer> => {
  const data = mkdtempSync(join(tmpdir(), 'twinfloor-page-'));
  let running: Host | undefined = idle.pop() ?? startHost();
  const address = await running.ask({ data, port: 0 });
  const port = Number(new URL(address).port);
  const end = async (): Promise<void> => {
    if (running === undefined) return;
    const { child } = running;
    const gone = once(child, 'exit');
    child.kill('SIGKILL');
    running = undefined;
    await gone;
  };
  return {
    address: () => address,
    end,
    startAgain: async () => {
      running = startHost();
      await running.ask({ data, port });
    },
    remove: async () => {
      if (running !== undefined) {
        await running.ask({});
        idle.push(running);
        running = undefined;
      }
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
