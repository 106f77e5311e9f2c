import { availableParallelism } from 'node:os';
import { MessageChannel, receiveMessageOnPort, Worker } from 'node:worker_threads';
import { type PartRan, type RunParts, runPart } from '../line/shift/index.ts';

/** More threads than this gain nothing for a command that runs for seconds. */
const mostThreads = 8;

interface Told {
  readonly at: number;
  readonly ran: PartRan;
}

/**
 * Runs parts on all cores: this thread takes its share, others take theirs, whoever is free the next one.
 *
 * Method   a shared counter hands out the parts. When none is left, what others took and have not told yet is run here
 *          too: the parts are the same wherever they are run, so a thread that died or was slow to start costs a part of
 *          time and never the answer
 * Symbols  thread  file of the program that a thread runs
 *          cores   how many may be used, this one among them
 * Assumes  nothing; one core is no other case
 */
export const runInThreads = (thread: URL, cores = availableParallelism()): RunParts => {
  let others: readonly Worker[] | undefined;
  const started = (): readonly Worker[] => {
    others ??= Array.from({ length: Math.min(mostThreads, cores) - 1 }, () => {
      const worker = new Worker(thread);
      // the command ends when its own work is over; what a thread can't do is done here
      worker.unref();
      worker.on('error', () => undefined);
      return worker;
    });
    return others;
  };
  return (asked, parts) => {
    if (parts.length < 2 || cores < 2) return parts.map((part) => runPart(asked, part));
    const next = new Int32Array(new SharedArrayBuffer(Int32Array.BYTES_PER_ELEMENT));
    const ran: (PartRan | undefined)[] = parts.map(() => undefined);
    const ports = started().map((worker) => {
      const { port1, port2 } = new MessageChannel();
      worker.postMessage({ asked, parts, next, port: port2 }, [port2]);
      port1.unref();
      return port1;
    });
    // read while this thread is at work, without giving way to others: the caller wants an answer, not a promise
    const read = (): void => {
      for (const port of ports) {
        for (let told = receiveMessageOnPort(port); told !== undefined; told = receiveMessageOnPort(port)) {
          const { at, ran: there } = told.message as Told;
          ran[at] ??= there;
        }
      }
    };
    for (let at = Atomics.add(next, 0, 1); at < parts.length; at = Atomics.add(next, 0, 1)) {
      ran[at] = runPart(asked, parts[at]!);
    }
    read();
    const whole = parts.map((part, at) => {
      const there = ran[at] ?? runPart(asked, part);
      // meanwhile another may have told the next
      read();
      return there;
    });
    for (const port of ports) port.close();
    return whole;
  };
};
