import { eachRemedy } from '../floor/index.ts';
import type { RemedyQuestion } from './state/page.ts';

/** Solves one question, one remedy after the other; the page gives a search up by ending the worker. */
self.onmessage = (event: MessageEvent<RemedyQuestion>): void => {
  const { book, floor, finding } = event.data;
  for (const remedy of eachRemedy(book, { floor, finding })) self.postMessage(remedy);
  self.postMessage('done');
};
