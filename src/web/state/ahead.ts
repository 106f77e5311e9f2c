/** Questions that are asked at a press, while the part that wants the answer is still on its way. */
export interface Ahead {
  readonly ask: <T>(what: string, run: () => Promise<T>) => void;
  /** The answer, for the first who wants it: whoever comes later asks anew. */
  readonly take: <T>(what: string) => Promise<T> | undefined;
}

/** Milliseconds for which what was asked may be taken for what is so now. */
const fresh = 2_000;

export const makeAhead = (later: (run: () => void, milliseconds: number) => void): Ahead => {
  const asked = new Map<string, Promise<unknown>>();
  return {
    ask: (what, run) => {
      const answer = run();
      asked.set(what, answer);
      later(() => {
        if (asked.get(what) === answer) asked.delete(what);
      }, fresh);
    },
    take: <T>(what: string) => {
      const answer = asked.get(what) as Promise<T> | undefined;
      asked.delete(what);
      return answer;
    },
  };
};
