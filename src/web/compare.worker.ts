import type { Book } from '../book/index.ts';
import { compareBooks } from '../floor/index.ts';

/** Compares two books; the page gives a comparison up by ending the worker. */
self.onmessage = (event: MessageEvent<{ readonly from: Book; readonly to: Book }>): void => {
  self.postMessage(compareBooks(event.data.from, event.data.to));
};
