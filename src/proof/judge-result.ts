import type { Problem } from '../quantity/problem.ts';
import { claimed, type HeldCondition, heldCondition } from './held-condition.ts';
import { type HeldLimit, heldLimit } from './held-limit.ts';
import type { PlannedCheck } from './plan.ts';
import { proofProblem } from './problems.ts';
import type { RecordedResult } from './results.ts';
import { type TypedReading, typedReading } from './typed-reading.ts';

export type ResultVerdict =
  /** Within the limits and in condition. */
  | 'proved'
  /** Seen to work, out of condition or with something untold. */
  | 'shown'
  | 'failed'
  /** Accepted as it is, by somebody, for a reason and a time. */
  | 'concession'
  /** The result is still to come. */
  | 'waits';

/** Why a result that did not fail is not proved, most telling first. */
const shortfallsInOrder = [
  /** Beyond the limit, or not as expected, while a condition did not hold. */
  'missed',
  /** A condition did not hold. */
  'broken',
  /** A condition was not read, or what it must be is unknown. */
  'unread',
  /** The run was shorter than agreed. */
  'brief',
  /** Read with an instrument of the book whose calibration was past. */
  'overdue',
  /** Fewer readings than the check wants. */
  'few',
  /** The book does not say what the limit is. */
  'limit',
  /** The spread of the reading lies on both sides of the limit. */
  'unsure',
  /** A person's word in the first form of the record: nothing came with it that could be compared. */
  'word',
] as const;

export type Shortfall = (typeof shortfallsInOrder)[number];

export interface JudgedResult {
  readonly result: RecordedResult;
  readonly verdict: ResultVerdict;
  readonly limits: readonly HeldLimit[];
  readonly conditions: readonly HeldCondition[];
  /** Conditions in the book's own words that were read. */
  readonly ownConditions: readonly { readonly text: string; readonly held?: boolean }[];
  readonly shortfalls: readonly Shortfall[];
  /** Whether the record says anything of what the check asks: readings, or whether it was as expected. */
  readonly told: boolean;
  /** What of the record could not be taken; it then proves nothing. */
  readonly problems: readonly Problem[];
}

/** A stop, a guard or what must not start: nobody can accept that it does not work. */
const admitsConcession = ({ stage, missFails }: PlannedCheck): boolean => !(missFails && stage === 'stops');

const readingsOf = (
  check: PlannedCheck,
  { readings = [] }: RecordedResult,
  path: string,
): { readonly typed: readonly TypedReading[]; readonly problems: readonly Problem[] } => {
  const kind = check.limits[0]?.figure.kind;
  if (kind === undefined) return { typed: [], problems: [] };
  const read = readings.map((text, i) => typedReading(text, kind, `${path}/readings/${i}`));
  return {
    typed: read.flatMap((one) => (one.ok ? [one.value] : [])),
    problems: read.flatMap((one) => (one.ok ? [] : one.problems)),
  };
};

const absent = (check: PlannedCheck, result: RecordedResult, path: string): readonly Problem[] => {
  if (check.limits.length > 0) {
    const allowed = check.limits[0]!.figure.kind;
    return (result.readings ?? []).length === 0
      ? [proofProblem('PROOF_READINGS_ABSENT', `${path}/readings`, { allowed })]
      : [];
  }
  return result.seen === undefined ? [proofProblem('PROOF_SEEN_ABSENT', `${path}/seen`)] : [];
};

const strange = (
  check: PlannedCheck,
  { conditions = [], shared = false }: RecordedResult,
  path: string,
): readonly Problem[] => {
  if (shared) return [];
  const known = [...check.under.map(({ id }) => id as string), ...check.ownConditions];
  return conditions.flatMap(({ condition }, i) =>
    known.includes(condition)
      ? []
      : [
          proofProblem('PROOF_CONDITION_UNKNOWN', `${path}/conditions/${i}/condition`, {
            given: condition,
            allowed: known,
          }),
        ],
  );
};

/**
 * What a try of a check comes to.
 *
 * Method   readings against the limits, then each condition as it was read against what it must be. Beyond a limit: failed,
 *          unless a condition did not hold on which the reading rests, where it is shown; what must work whatever the
 *          conditions fails all the same. Within: proved where every condition was read and held, every reading is there
 *          and the book says the limit; else shown, with what was lacking. A failed or shown try that somebody accepts as
 *          it is, is a concession, but never a stop or a guard
 * Symbols  check  as planned for the floor;  path  of the record, for problems
 * Returns  verdict with everything that it rests on; a record that can't be taken is at most shown
 * Cost     O(readings and conditions)
 */
export const judgeResult = (check: PlannedCheck, result: RecordedResult, path: string): JudgedResult => {
  const readings = readingsOf(check, result, path);
  const limits = check.limits.map((limit) => heldLimit(limit, readings.typed, check.judged));
  const given = result.conditions ?? [];
  const conditions = check.under.map((condition) => heldCondition(condition, given, path));
  const ownConditions = check.ownConditions.map((text) => {
    const read = given.find((one) => one.condition === text)?.read;
    const held = read === undefined ? undefined : claimed(read);
    return { text, ...(held === undefined ? {} : { held }) };
  });
  const waits =
    result.late !== undefined && result.seen === undefined && (result.readings ?? []).length === 0;
  const inVain = result.concession !== undefined && !admitsConcession(check);
  const silent = waits ? [] : absent(check, result, path);
  const problems = [
    ...silent,
    ...strange(check, result, path),
    ...readings.problems,
    ...conditions.flatMap((one) => one.problems),
    ...(inVain ? [proofProblem('PROOF_NO_CONCESSION', `${path}/concession`)] : []),
  ];
  const all = [...conditions, ...ownConditions].map(({ held }) => held);
  const missed = result.seen === false || limits.some(({ kept }) => kept === false);
  const broken = all.includes(false);
  const short: Readonly<Record<Shortfall, boolean>> = {
    missed,
    broken,
    unread: all.includes(undefined),
    brief: result.brief === true,
    overdue: result.overdue === true,
    few: check.limits.length > 0 && readings.typed.length < check.readings,
    limit: check.missing.length > 0 || limits.some(({ limit }) => limit.figure.value === undefined),
    unsure: limits.some(
      ({ limit, value, kept }) =>
        limit.figure.value !== undefined && value !== undefined && kept === undefined,
    ),
    word: result.basis === undefined,
  };
  const shortfalls = shortfallsInOrder.filter((one) => short[one]);
  const tried =
    missed && (check.missFails || !broken) ? 'failed' : missed || shortfalls.length > 0 ? 'shown' : 'proved';
  const conceded = result.concession !== undefined && tried !== 'proved' && !inVain;
  const verdict = waits
    ? 'waits'
    : conceded
      ? 'concession'
      : tried === 'proved' && problems.length > 0
        ? 'shown'
        : tried;
  return {
    result,
    verdict,
    limits,
    conditions,
    ownConditions,
    shortfalls,
    told: silent.length === 0,
    problems,
  };
};
