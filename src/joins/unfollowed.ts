import { byText } from '../record/heads.ts';

/** A statement with what its writer knew of when they made it. */
export interface Statement {
  readonly id: string;
  readonly at: string;
  readonly follows?: readonly string[];
}

/** Earlier before later by the moment that the devices claim; of equal ones by id. */
export const byMoment = (a: Statement, b: Statement): number =>
  Date.parse(a.at) - Date.parse(b.at) || byText(a.id, b.id);

/**
 * The statements of one thing that no other follows; more than one were written apart from each other.
 *
 * Symbols  sorted  by moment: one that does not say what it follows comes after all before it
 */
export const unfollowed = <T extends Statement>(sorted: readonly T[]): readonly T[] => {
  const followed = new Set(
    sorted.flatMap(({ follows }, i) => follows ?? sorted.slice(0, i).map(({ id }) => id)),
  );
  const last = sorted.filter(({ id }) => !followed.has(id));
  // a circle has no end
  return last.length > 0 ? last : sorted.slice(-1);
};
