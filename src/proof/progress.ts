import { type CheckState, isPassed, type ProvedCheck } from './proved-check.ts';
import { stageOrder } from './stage.ts';

/** A check that is to be done and can't be yet. */
export interface Blocked {
  readonly check: string;
  /** Ids of the checks that it waits for. */
  readonly by: readonly string[];
}

/** How far a floor is. */
export interface Progress {
  readonly counts: Readonly<Record<CheckState, number>>;
  readonly blocked: readonly Blocked[];
  /** The first checks that can be done now, in the order of the protocol. */
  readonly next: readonly string[];
}

const none: Readonly<Record<CheckState, number>> = {
  proved: 0,
  shown: 0,
  failed: 0,
  concession: 0,
  waits: 0,
  open: 0,
  stale: 0,
  stands: 0,
};

/** What a check waits for: what comes before it, hold points of earlier stages, and results that it may not outrun. */
const waitsFor = ({ check }: ProvedCheck, checks: readonly ProvedCheck[]): readonly string[] => {
  const order = stageOrder(check.stage);
  return checks
    .filter((other) => other.check !== check && !isPassed(other))
    .filter(
      ({ check: { id, point, stage, late } }) =>
        check.after.includes(id) ||
        (point === 'hold' && stageOrder(stage) < order) ||
        (late !== undefined && stageOrder(late.before) <= order),
    )
    .map(({ check: { id } }) => id);
};

/** What is proved, shown, failed and open on a floor, what waits for what, and what can be done now. */
export const progressOf = (checks: readonly ProvedCheck[]): Progress => {
  const counts = { ...none };
  for (const { state } of checks) counts[state] += 1;
  const toDo = checks.filter((one) => !isPassed(one) && one.state !== 'waits');
  const waiting = toDo.map((one) => ({ check: one.check.id, by: waitsFor(one, checks) }));
  return {
    counts,
    blocked: waiting.filter(({ by }) => by.length > 0),
    next: waiting.filter(({ by }) => by.length === 0).map(({ check }) => check),
  };
};
