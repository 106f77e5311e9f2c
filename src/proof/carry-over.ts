import type { StablePlace } from './book-places.ts';
import type { ConditionId } from './condition.ts';
import type { Shortfall } from './judge-result.ts';
import type { ProvedCheck } from './proved-check.ts';

/** Why a check returns on the next floor's list. */
export type CarryReason =
  /** That floor can't bring about a condition: known before anyone starts. */
  'planned' | 'undone' | 'shown' | 'failed' | 'concession' | 'waits' | 'stale';

/** A check that one floor could not prove and the next must. */
export interface CarryOver {
  readonly check: string;
  /** Tag of the floor that could not. */
  readonly from: string;
  readonly reason: CarryReason;
  /** Conditions that did not hold there, or can't. */
  readonly conditions: readonly ConditionId[];
  readonly shortfalls: readonly Shortfall[];
  /** Places of the book that changed since. */
  readonly changed: readonly StablePlace[];
}

const brokenOf = ({ check, inForce }: ProvedCheck): readonly ConditionId[] =>
  inForce === undefined
    ? check.cannot
    : inForce.conditions.filter(({ held }) => held !== true).map(({ condition }) => condition.id);

const reasonOf = ({ state, check }: ProvedCheck): CarryReason | undefined => {
  if (state === 'proved' || state === 'stands') return undefined;
  if (state === 'open') return check.plan === 'show only' ? 'planned' : 'undone';
  return state;
};

/**
 * What a floor leaves to the next, and why.
 *
 * Method   every check that both floors have and that is not proved on the first one. What is proved there and must be
 *          proved again, since the line was parted or the supply is another, is on the next list anyway and no carry-over
 * Symbols  next  ids of the checks of the next floor
 * Returns  carry-overs in the order of the first floor's protocol
 * Cost     O(checks)
 */
export const carriedOver = (
  checks: readonly ProvedCheck[],
  from: string,
  next: ReadonlySet<string>,
): readonly CarryOver[] =>
  checks.flatMap((one) => {
    const reason = reasonOf(one);
    if (reason === undefined || !next.has(one.check.id)) return [];
    return [
      {
        check: one.check.id,
        from,
        reason,
        conditions: brokenOf(one),
        shortfalls: one.inForce?.shortfalls ?? [],
        changed: one.changed,
      },
    ];
  });

/** Checks of a floor of which an earlier floor holds a proof that travels: they stand until somebody tries them here. */
export const standing = (
  checks: readonly ProvedCheck[],
  before: readonly ProvedCheck[],
): readonly ProvedCheck[] => {
  const proved = new Set(
    before.filter(({ check, state }) => check.travels && state === 'proved').map(({ check }) => check.id),
  );
  return checks.map((one) =>
    one.state === 'open' && proved.has(one.check.id) ? { ...one, state: 'stands' as const } : one,
  );
};
