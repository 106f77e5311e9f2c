import type { Problem } from '../quantity/problem.ts';
import type { Condition } from './condition.ts';
import { heldLimit } from './held-limit.ts';
import { proofProblem } from './problems.ts';
import type { ConditionReading } from './results.ts';
import { typedReading } from './typed-reading.ts';

/** A condition with what was read of it. */
export interface HeldCondition {
  readonly condition: Condition;
  /** As it was typed; absent where nobody read it. */
  readonly read?: string;
  /** Undefined where it was not read, or what it must be is unknown. */
  readonly held?: boolean;
  /** Share of the bound by which it was missed, or kept. */
  readonly margin?: number;
  readonly problems: readonly Problem[];
}

/** `yes` or `no`. */
export const claimed = (read: string): boolean | undefined =>
  ({ yes: true, no: false })[read.trim().toLowerCase()];

const quantityHeld = (condition: Condition, read: string, path: string): HeldCondition => {
  const kind = condition.limits[0]?.figure.kind;
  // what it must be is not known: the reading is kept as it was typed
  if (kind === undefined) return { condition, read, problems: [] };
  const typed = typedReading(read, kind, path);
  if (!typed.ok) return { condition, read, problems: typed.problems };
  const limits = condition.limits.map((limit) => heldLimit(limit, [typed.value], 'each'));
  const kepts = limits.map(({ kept }) => kept);
  const held = kepts.includes(false) ? false : kepts.every((kept) => kept === true) ? true : undefined;
  const margins = limits.flatMap(({ margin }) => (margin === undefined ? [] : [margin]));
  return {
    condition,
    read,
    problems: [],
    ...(held === undefined ? {} : { held }),
    ...(margins.length === 0 ? {} : { margin: Math.min(...margins) }),
  };
};

/** A condition against what was read of it when a check was tried. */
export const heldCondition = (
  condition: Condition,
  readings: readonly ConditionReading[],
  path: string,
): HeldCondition => {
  const at = readings.findIndex((one) => one.condition === condition.id);
  const read = readings[at]?.read;
  if (read === undefined) return { condition, problems: [] };
  const place = `${path}/conditions/${at}/read`;
  if (condition.read === 'quantity') return quantityHeld(condition, read, place);
  if (condition.read === 'word') {
    return condition.word === undefined
      ? { condition, read, problems: [] }
      : { condition, read, held: read.trim() === condition.word, problems: [] };
  }
  const held = claimed(read);
  return held === undefined
    ? { condition, read, problems: [proofProblem('PROOF_CLAIM', place, { given: read })] }
    : { condition, read, held, problems: [] };
};
