import { type MessagePort, parentPort } from 'node:worker_threads';
import { type RunAsked, type RunPart, runPart } from '../line/shift/index.ts';

/** What a thread is sent: what is asked, the parts, the place of the next one that nobody took, and where to answer. */
export interface ThreadWork {
  readonly asked: RunAsked;
  readonly parts: readonly RunPart[];
  readonly next: Int32Array<SharedArrayBuffer>;
  readonly port: MessagePort;
}

/** Takes one part after the other as long as there are any; each is told as soon as it is there. */
parentPort?.on('message', ({ asked, parts, next, port }: ThreadWork) => {
  for (let at = Atomics.add(next, 0, 1); at < parts.length; at = Atomics.add(next, 0, 1)) {
    port.postMessage({ at, ran: runPart(asked, parts[at]!) });
  }
  port.close();
});
