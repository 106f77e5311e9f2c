import { pathToFileURL } from 'node:url';
import { describe, expect, it } from 'vitest';
import { type RunAsked, type RunPart, runPart } from '../line/shift/index.ts';
import { flagonShift } from '../line/testing/flagon-shift.ts';
import { runInThreads } from './run-in-threads.ts';

const asked: RunAsked = { line: flagonShift, seed: 3, of: 'sums' };
const parts: readonly RunPart[] = [0, 2, 4, 6].map((first) => ({ first, shifts: 2 }));
const alone = parts.map((part) => runPart(asked, part));

/** A thread that does what it is told in its own words: a program of its own, as the threads are. */
const thread = (program: string): URL => new URL(`data:text/javascript,${encodeURIComponent(program)}`);

describe('shifts in threads', () => {
  it('come to the same where a thread is not there, ends at once, or takes a part and never tells', () => {
    const threads = [
      pathToFileURL('/no/such/thread.mjs'),
      thread('process.exit(1)'),
      thread(
        "import { parentPort } from 'node:worker_threads';" +
          "parentPort.on('message', ({ next }) => { Atomics.add(next, 0, 1); process.exit(1); });",
      ),
    ];
    for (const one of threads) {
      const run = runInThreads(one, 3);
      expect(run(asked, parts)).toEqual(alone);
      // and once more, with threads that are dead by now
      expect(run({ ...asked, of: 'goods' }, parts)).toEqual(
        parts.map((part) => runPart({ ...asked, of: 'goods' }, part)),
      );
    }
  });

  it('are run here where there is one core', () => {
    expect(runInThreads(thread('process.exit(1)'), 1)(asked, parts)).toEqual(alone);
  });
});
