import { bookAsFound, promisedAndFound } from '../floor/found/index.ts';
import type { BesideAnswer, BesideQuestion } from './state/page.ts';

/** Sets what was read beside what was promised; the page gives it up by ending the worker. */
self.onmessage = ({ data: { book, readings } }: MessageEvent<BesideQuestion>): void => {
  const answer: BesideAnswer = {
    places: promisedAndFound(book, readings),
    refused: bookAsFound(book, readings).refused,
  };
  self.postMessage(answer);
};
