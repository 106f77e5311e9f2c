import type { BookComparison } from '../../floor/index.ts';
import type { CompareBooks } from './page.ts';

/** Compares in a worker of its own: each change of a book is judged alone, which may take seconds. */
export const compareInWorker =
  (open: () => Worker): CompareBooks =>
  (books, answer) => {
    const worker = open();
    worker.onmessage = ({ data }: MessageEvent<BookComparison>) => {
      worker.terminate();
      answer(data);
    };
    worker.onerror = () => {
      worker.terminate();
      answer('failed');
    };
    worker.postMessage(books);
    return () => worker.terminate();
  };
