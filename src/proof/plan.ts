import type { Check } from './check.ts';
import { checksOfBook } from './checks-of-book.ts';
import type { Condition, ConditionId } from './condition.ts';
import { conditionOf } from './conditions.ts';
import type { ProofContext } from './proof-context.ts';

/** What a floor can do with a check, known before anyone starts. */
export type Plan =
  | 'prove'
  /** A condition can't hold here: the next floor must prove it. */
  | 'show only'
  /** The book does not say enough to tell. */
  | 'open';

export interface PlannedCheck extends Check {
  readonly plan: Plan;
  /** Its conditions in the order of the check. */
  readonly under: readonly Condition[];
  /** Conditions that can't hold here. */
  readonly cannot: readonly ConditionId[];
  /** Conditions of which the book does not say whether they can. */
  readonly untold: readonly ConditionId[];
}

const planOf = (check: Check, under: readonly Condition[]): PlannedCheck => {
  const those = (here: Condition['here']): readonly ConditionId[] =>
    under.filter((one) => one.here === here).map(({ id }) => id);
  const cannot = those('cannot');
  const untold = those('unknown');
  const open = untold.length > 0 || check.missing.length > 0;
  return { ...check, under, cannot, untold, plan: cannot.length > 0 ? 'show only' : open ? 'open' : 'prove' };
};

/** The checks of a floor, each with its conditions and with what this floor can do with it. */
export const plannedChecks = (c: ProofContext): readonly PlannedCheck[] => {
  const conditions = new Map<ConditionId, Condition>();
  const conditionHere = (id: ConditionId): Condition => {
    const known = conditions.get(id) ?? conditionOf(id, c);
    conditions.set(id, known);
    return known;
  };
  return checksOfBook(c).map((check) => planOf(check, check.conditions.map(conditionHere)));
};
