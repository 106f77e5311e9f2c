import type { FillAnswer, FillQuestion } from './fill-answer.ts';

/** Works out what trials say, away from the page; gives back how to give it up. */
export type AnswerFill = (
  question: FillQuestion,
  answer: (answer: FillAnswer | 'failed') => void,
) => () => void;

/** One worker after the other question; one that is given up in the middle is ended. */
export const fillInWorker = (open: () => Worker): AnswerFill => {
  let spare: Worker | undefined;
  return (question, answer) => {
    const worker = spare ?? open();
    spare = undefined;
    let over = false;
    worker.onmessage = ({ data }: MessageEvent<FillAnswer>) => {
      if (over) return;
      if (data.done) {
        over = true;
        spare = worker;
      }
      answer(data);
    };
    worker.onerror = () => {
      if (over) return;
      over = true;
      worker.terminate();
      answer('failed');
    };
    worker.postMessage(question);
    return () => {
      if (over) return;
      over = true;
      worker.terminate();
    };
  };
};
