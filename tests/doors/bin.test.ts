import { type ChildProcess, execFile, spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdtempSync, rmSync } from 'node:fs';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { MessageChannel, Worker } from 'node:worker_threads';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { processWorld } from '../../src/cli/process-world.ts';
import { run } from '../../src/cli/run.ts';
import { runPart } from '../../src/line/shift/index.ts';
import { flagonShift } from '../../src/line/testing/flagon-shift.ts';

/** The commands as a person starts them: a process of its own, the built program, real signals. */
const root = join(import.meta.dirname, '../..');
const bin = join(root, 'bin/twinfloor.mjs');
const demo = 'src/book/demo/flagon-line.json';

interface Ended {
  readonly status: number;
  readonly out: string;
  readonly err: string;
}

const ended = (script: string, ...args: string[]): Promise<Ended> =>
  new Promise((resolve) => {
    const options = { cwd: root, maxBuffer: 64 * 1024 * 1024 };
    execFile(process.execPath, [join(root, script), ...args], options, (cause, out, err) => {
      resolve({ status: typeof cause?.code === 'number' ? cause.code : cause === null ? 0 : -1, out, err });
    });
  });

const running: ChildProcess[] = [];

/** Starts the server and waits for the address that it prints. */
const started = (...args: string[]): Promise<{ child: ChildProcess; address: string; said: () => string }> =>
  new Promise((resolve, reject) => {
    const child = spawn(process.execPath, [join(root, 'scripts/start.mjs'), ...args], { cwd: root });
    running.push(child);
    let said = '';
    child.stdout.on('data', (chunk) => {
      said += String(chunk);
      const address = /http:\S+/.exec(said)?.[0];
      if (address !== undefined && said.includes('Ctrl+C')) resolve({ child, address, said: () => said });
    });
    child.once('close', () => reject(new Error(`ended with: ${said}`)));
  });

const closed = (child: ChildProcess, signal: NodeJS.Signals): Promise<number | null> =>
  new Promise((resolve) => {
    child.once('close', resolve);
    child.kill(signal);
  });

let folder = '';
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'doors-'));
  // builds where the sources are newer than what was built
  expect((await ended('bin/twinfloor.mjs', '--version')).status).toBe(0);
}, 180_000);
afterAll(() => {
  for (const child of running) child.kill('SIGKILL');
  rmSync(folder, { recursive: true, force: true });
});

describe('the command line', () => {
  it('ends with 0, 1 or 2, with words on the right stream', async () => {
    expect(await ended('bin/twinfloor.mjs', 'validate', 'examples/gravity.json')).toMatchObject({
      status: 0,
      err: '',
    });
    const short = await ended('bin/twinfloor.mjs', 'assess', demo);
    expect([short.status, short.err]).toEqual([1, '']);
    const bad = await ended('bin/twinfloor.mjs', 'assess', 'nowhere.json');
    expect(bad).toEqual({ status: 2, out: '', err: 'There is no file nowhere.json.\n' });
  });

  it('reads standard input for -, and leaves the rest of a file that never ends', async () => {
    const piped = (input: string, command: string) =>
      new Promise<Ended>((resolve) => {
        const line = `${input} | "${process.execPath}" "${bin}" ${command}`;
        execFile('sh', ['-c', line], { cwd: root }, (cause, out, err) => {
          resolve({ status: typeof cause?.code === 'number' ? cause.code : 0, out, err });
        });
      });
    expect(await piped('cat examples/gravity.json', 'validate -')).toMatchObject({ status: 0 });
    const endless = await piped('yes', 'validate -');
    expect(endless.status).toBe(2);
    expect(endless.err).toContain('5.0 MB');
  });

  it('lets its reader go away without a word', async () => {
    const line = `"${process.execPath}" "${bin}" assess ${demo} --json 2>&1 | head -c 10`;
    const out = await new Promise<string>((resolve) => {
      execFile('sh', ['-c', line], { cwd: root }, (_, text) => resolve(text));
    });
    expect(out).toHaveLength(10);
  });
});

describe('a thread that takes its share of the shifts', () => {
  it('gives what this thread would give, and stops where none is left', async () => {
    const worker = new Worker(pathToFileURL(join(root, 'dist/node/shift-thread.mjs')));
    const { port1, port2 } = new MessageChannel();
    const asked = { line: flagonShift, seed: 4, of: 'sums' as const };
    const parts = [0, 3, 6].map((first) => ({ first, shifts: 3 }));
    // the first is taken already
    const next = new Int32Array(new SharedArrayBuffer(4)).fill(1);
    const told: unknown[] = [];
    port1.on('message', (one) => told.push(one));
    worker.postMessage({ asked, parts, next, port: port2 }, [port2]);
    await once(port1, 'close');
    expect(told).toEqual([1, 2].map((at) => ({ at, ran: runPart(asked, parts[at]!) })));
    await worker.terminate();
  });

  it('leaves the answer of the command as it is on one core', async () => {
    const args = ['shift', demo, '--floor', 'LARKMOOR', '--brief', '--shifts', '110', '--json'];
    const { out } = await ended('bin/twinfloor.mjs', ...args);
    let alone = '';
    const world = processWorld({ root, serve: () => Promise.reject(new Error('not asked')) });
    await run(args, {
      ...world,
      cwd: root,
      out: (text) => {
        alone += text;
      },
    });
    expect(JSON.parse(out)).toEqual(JSON.parse(alone));
    // twice the shifts of a usual call, once without a second core
  }, 120_000);
});

describe('npm start', () => {
  it('opens on an empty folder, keeps it, opens a second time, and closes on a signal', async () => {
    const data = join(folder, 'books');
    const first = await started('--port', '0', '--data', data);
    const books = (await (await fetch(`${first.address}api/books`)).json()) as unknown[];
    expect(books).toMatchObject([{ id: 'flagon-line', revision: 1 }]);
    expect(await (await fetch(first.address)).text()).toContain('<script');
    expect(await closed(first.child, 'SIGTERM')).toBe(0);

    const second = await started('--port', '0', '--data', data);
    expect(second.said()).toContain(data);
    expect(await (await fetch(`${second.address}api/books`)).json()).toEqual(books);
    expect(await closed(second.child, 'SIGINT')).toBe(0);
  });

  it('on a port in use says so in one sentence, ends with 2 and leaves no data behind', async () => {
    const other = createServer().listen(0, '127.0.0.1');
    await new Promise((resolve) => other.once('listening', resolve));
    const port = String((other.address() as AddressInfo).port);
    const { status, out, err } = await ended(
      'scripts/start.mjs',
      '--port',
      port,
      '--data',
      join(folder, 'none'),
    );
    other.close();
    expect([status, out]).toEqual([2, '']);
    expect(err).toContain(`Port ${port} is in use`);
    expect(err.trim().split('\n')).toHaveLength(1);
  });
});
