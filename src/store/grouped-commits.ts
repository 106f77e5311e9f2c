import { type Problem, type Result, refuse } from '../quantity/problem.ts';
import type { SqliteConnection } from './sqlite-driver.ts';

/** Carries problems out of a piece of work, which must be rolled back when there are any. */
export class Refusal {
  readonly problems: readonly Problem[];

  constructor(problems: readonly Problem[]) {
    this.problems = problems;
  }
}

type Work<T> = () => Result<T>;

interface Waiting {
  readonly run: () => () => void;
  readonly reject: (error: unknown) => void;
}

/**
 * Lets the writes that come in one turn of the program share one commit: a disk syncs some hundred times a second,
 * and twenty writers would wait for each other. Each is acknowledged after the commit that holds it, and each is
 * whole or not there: one that throws a Refusal takes nothing of the others with it.
 */
export const groupedCommits = (connection: SqliteConnection): (<T>(work: Work<T>) => Promise<Result<T>>) => {
  let waiting: Waiting[] = [];

  const alone = <T>(work: Work<T>): Result<T> => {
    connection.exec('SAVEPOINT one');
    try {
      const result = work();
      connection.exec('RELEASE one');
      return result;
    } catch (error) {
      // the disk failed: nothing of the group is kept, and each is told
      if (!(error instanceof Refusal)) throw error;
      connection.exec('ROLLBACK TO one');
      connection.exec('RELEASE one');
      return refuse(...error.problems);
    }
  };

  const commit = (): void => {
    const group = waiting;
    waiting = [];
    try {
      const acknowledge = connection.transaction(() => group.map(({ run }) => run()));
      for (const told of acknowledge) told();
    } catch (error) {
      for (const { reject } of group) reject(error);
    }
  };

  return <T>(work: Work<T>) =>
    new Promise<Result<T>>((resolve, reject) => {
      if (waiting.length === 0) setImmediate(commit);
      waiting.push({
        run: () => {
          const result = alone(work);
          return () => resolve(result);
        },
        reject,
      });
    });
};
