import type { BesideAnswer, SetBeside } from './page.ts';

/** Sets what was read beside what was promised in a worker of its own: each reading is judged alone, which takes time. */
export const besideInWorker =
  (open: () => Worker): SetBeside =>
  (question, answer) => {
    const worker = open();
    worker.onmessage = ({ data }: MessageEvent<BesideAnswer>) => {
      worker.terminate();
      answer(data);
    };
    worker.onerror = () => {
      worker.terminate();
      answer('failed');
    };
    worker.postMessage(question);
    return () => worker.terminate();
  };
