import type { ShiftAnswer, ShiftQuestion } from './shift-answer.ts';

/** Runs shifts away from the page and tells what they say so far; gives back how to give it up. */
export type AnswerShifts = (
  question: ShiftQuestion,
  answer: (answer: ShiftAnswer | 'failed') => void,
) => () => void;

/** Each question in a worker of its own, so that two floors run at once; one that is given up is ended. */
export const shiftsInWorker =
  (open: () => Worker): AnswerShifts =>
  (question, answer) => {
    const worker = open();
    let over = false;
    const end = (): void => {
      over = true;
      worker.terminate();
    };
    worker.onmessage = ({ data }: MessageEvent<ShiftAnswer>) => {
      if (over) return;
      if (data.done) end();
      answer(data);
    };
    worker.onerror = () => {
      if (over) return;
      end();
      answer('failed');
    };
    worker.postMessage(question);
    return end;
  };
