import { type FillQuestion, fillAnswers } from './fill/fill-answer.ts';

/** Works out what trials say, part after part; the page gives it up by ending the worker. */
self.onmessage = ({ data }: MessageEvent<FillQuestion>): void => {
  for (const answer of fillAnswers(data)) self.postMessage(answer);
};
