import { remediesFor } from '../floor/index.ts';
import type { RemedyQuestion } from './state/page.ts';

/** Solves one question and ends; the page gives a search up by ending the worker. */
self.onmessage = (event: MessageEvent<RemedyQuestion>): void => {
  const { book, floor, finding } = event.data;
  self.postMessage(remediesFor(book, { floor, finding }));
};
