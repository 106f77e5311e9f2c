import { execFile } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { spread } from './spread.ts';
import { startedServer } from './started-server.ts';
import type { Row } from './table.ts';

const timed = async (work: () => Promise<unknown>): Promise<number> => {
  const from = performance.now();
  await work();
  return performance.now() - from;
};

/** Starts the server, waits for its address, and ends it. */
const start = async (root: string, data: string): Promise<void> => (await startedServer(root, data)).end();

const command = (root: string, args: readonly string[]): Promise<void> =>
  new Promise((resolve, reject) => {
    execFile(process.execPath, [join(root, 'bin/twinfloor.mjs'), ...args], { cwd: root }, (cause) => {
      // 1 is an answer too: a finding is short
      if (cause === null || cause.code === 1) resolve();
      else reject(cause);
    });
  });

/** Whole processes, from the call to their end. */
export const doorRows = async (root: string): Promise<readonly Row[]> => {
  const data = mkdtempSync(join(tmpdir(), 'bench-'));
  try {
    await start(root, data);
    const repeat = async (work: () => Promise<unknown>, runs: number) => {
      const times: number[] = [];
      for (let i = 0; i < runs; i += 1) times.push(await timed(work));
      return spread(times);
    };
    return [
      {
        what: 'second start of the server, and its end',
        unit: 'ms',
        ...(await repeat(() => start(root, data), 5)),
        wanted: { figure: 'median', sense: 'under', bound: 2000 },
      },
      {
        what: 'twinfloor sheet',
        unit: 'ms',
        ...(await repeat(() => command(root, ['sheet', 'pipe-velocity', 'flow=60 L/min', 'bore=1 in']), 9)),
        wanted: { figure: 'median', sense: 'under', bound: 300 },
      },
      {
        what: 'twinfloor assess, demo book',
        unit: 'ms',
        ...(await repeat(() => command(root, ['assess', 'src/book/demo/flagon-line.json']), 9)),
      },
    ];
  } finally {
    rmSync(data, { recursive: true, force: true });
  }
};
