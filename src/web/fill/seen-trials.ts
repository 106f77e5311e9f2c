import type { EnteredBottle } from '../../fill/slips.ts';
import type { RecordedTrial } from '../../record/trials.ts';
import { enteredBottle } from './entered.ts';

/** Trials that a page has seen: a record is never changed, so that each is made once and read once. */
export interface SeenTrials {
  /** The same trials, each the very one that was seen first under its id. */
  readonly firstSeen: (trials: readonly RecordedTrial[]) => readonly RecordedTrial[];
  /** As slips are looked for in it. */
  readonly bottleOf: (trial: RecordedTrial) => EnteredBottle;
}

export const seenTrials = (): SeenTrials => {
  const known = new Map<string, RecordedTrial>();
  const bottles = new WeakMap<RecordedTrial, EnteredBottle>();
  return {
    firstSeen: (trials) =>
      trials.map((trial) => {
        const seen = known.get(trial.id);
        if (seen !== undefined) return seen;
        known.set(trial.id, trial);
        return trial;
      }),
    bottleOf: (trial) => {
      const read = bottles.get(trial) ?? enteredBottle(trial);
      bottles.set(trial, read);
      return read;
    },
  };
};
