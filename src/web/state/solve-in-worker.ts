import type { Remedy } from '../../floor/assessment.ts';
import type { SolveRemedies } from './page.ts';

/** Solves remedies in a worker; one that is given up is ended in the middle of its search. */
export const solveInWorker = (open: () => Worker): SolveRemedies => {
  let spare: Worker | undefined;
  return (question, answer) => {
    const worker = spare ?? open();
    spare = undefined;
    let over = false;
    const found: Remedy[] = [];
    worker.onmessage = ({ data }: MessageEvent<Remedy | 'done'>) => {
      if (over) return;
      if (data === 'done') {
        over = true;
        spare = worker;
      } else found.push(data);
      answer({ found: [...found], done: over });
    };
    worker.onerror = () => {
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
