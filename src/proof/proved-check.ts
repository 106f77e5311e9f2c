import { type BookPlaces, placeKey, type StablePlace } from './book-places.ts';
import { type JudgedResult, judgeResult, type ResultVerdict } from './judge-result.ts';
import type { PlannedCheck } from './plan.ts';
import type { RecordedResult } from './results.ts';

/** Where a check stands on its floor. */
export type CheckState =
  | ResultVerdict
  /** Nobody has tried it here. */
  | 'open'
  /** The book has changed where it hangs on. */
  | 'stale'
  /** Proved on an earlier floor, and nothing of it was parted. */
  | 'stands';

/** A check with everything that was recorded of it on its floor. */
export interface ProvedCheck {
  readonly check: PlannedCheck;
  readonly state: CheckState;
  /** The last try, which counts. */
  readonly inForce?: JudgedResult;
  /** Tries before it, first to last; `judgedEarlier` says what each came to. */
  readonly earlier: readonly RecordedResult[];
  /** Places whose values are others than those that the last try was recorded over. */
  readonly changed: readonly StablePlace[];
}

/** Every place of the book that a result of a check hangs on: those of the check and of its conditions. */
export const restsOn = ({ places, under }: PlannedCheck): readonly string[] => [
  ...new Set([...places, ...under.flatMap((condition) => condition.places)]),
];

const judged = (check: PlannedCheck, result: RecordedResult): JudgedResult =>
  judgeResult(check, result, `/records/${result.id}/body`);

/** What the tries before the last came to: nothing else hangs on them, so it is worked out for who looks at them. */
export const judgedEarlier = ({
  check,
  earlier,
}: Pick<ProvedCheck, 'check' | 'earlier'>): readonly JudgedResult[] =>
  earlier.map((result) => judged(check, result));

/** A check against the tries of it, from the first to the last, which alone is judged. */
export const provedCheck = (
  check: PlannedCheck,
  results: readonly RecordedResult[],
  places: BookPlaces,
): ProvedCheck => {
  const last = results.at(-1);
  if (last === undefined) return { check, state: 'open', earlier: [], changed: [] };
  const inForce = judged(check, last);
  const earlier = results.slice(0, -1);
  // a record that says nothing of what is asked is no try
  if (!inForce.told) return { check, state: 'open', inForce, earlier, changed: [] };
  const { shared } = inForce.result;
  const own = new Set(restsOn(check).map((path) => placeKey(places.stable(path))));
  // a record of several checks says what the book was at the places of all of them
  const basis = inForce.result.basis?.filter((one) => shared !== true || own.has(placeKey(one)));
  const changed = basis === undefined ? [] : places.changedSince(basis, restsOn(check));
  // what failed or is still awaited must be done again as it is
  const stands = inForce.verdict === 'failed' || inForce.verdict === 'waits' || changed.length === 0;
  return {
    check,
    state: stands ? inForce.verdict : 'stale',
    inForce,
    earlier,
    changed,
  };
};

/** What must work whatever the conditions, and before anything after it: half shown is not enough. */
const mustBeProved = ({ point, missFails }: PlannedCheck): boolean => point === 'hold' && missFails;

/** Whether what comes after may go on: it was seen to work, or accepted as it is. */
export const isPassed = ({ state, check }: ProvedCheck): boolean =>
  state === 'proved' ||
  state === 'concession' ||
  state === 'stands' ||
  (state === 'shown' && !mustBeProved(check));

/** Whether nothing of it is left to be done. */
export const isSettled = ({ state }: ProvedCheck): boolean =>
  state === 'proved' || state === 'concession' || state === 'stands';
