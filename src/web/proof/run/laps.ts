/**
 * A watch that each tap stops and starts again.
 *
 * Symbols  clock  milliseconds, of whoever holds the watch; it must not run backwards
 */
export interface LapWatch {
  /** Seconds since the tap before; undefined for the first. */
  readonly tap: () => number | undefined;
  /** What comes next is a first tap: the line stood, or somebody was late. */
  readonly stop: () => void;
}

export const lapWatch = (clock: () => number): LapWatch => {
  let before: number | undefined;
  return {
    tap: () => {
      const now = clock();
      const lap = before === undefined ? undefined : (now - before) / 1000;
      before = now;
      return lap;
    },
    stop: () => {
      before = undefined;
    },
  };
};
