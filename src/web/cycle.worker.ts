import { type ShiftQuestion, shiftAnswers } from './cycle/shift-answer.ts';

/** Runs the shifts of one floor, part after part; the page gives it up by ending the worker. */
self.onmessage = ({ data }: MessageEvent<ShiftQuestion>): void => {
  for (const answer of shiftAnswers(data)) self.postMessage(answer);
};
