import type { Book } from '../book/index.ts';
import type { Assessment, FloorAssessment } from '../floor/assessment.ts';
import { onDemand } from '../floor/on-demand.ts';
import type { Problem } from '../quantity/problem.ts';
import { clockOn } from '../record/clocked.ts';
import type { Envelope } from '../record/envelope.ts';
import { tryKey } from '../record/standing.ts';
import { type AfterRow, afterwardsOf } from './afterwards.ts';
import { placesOfBook } from './book-places.ts';
import { type CarryOver, carriedOver, standing } from './carry-over.ts';
import { claimedMoments } from './claimed-moments.ts';
import { type Gate, gatesOf } from './gates.ts';
import { plannedChecks } from './plan.ts';
import { type PlanOfDays, planOfDays } from './plan-of-days.ts';
import { proofProblem } from './problems.ts';
import { type Progress, progressOf } from './progress.ts';
import { proofContext } from './proof-context.ts';
import { type ProvedCheck, provedCheck } from './proved-check.ts';
import { type PunchPoint, punchPoints } from './punch-points.ts';
import { type Quarantine, quarantineOf } from './quarantine.ts';
import { type HeardReply, repliesOf } from './replies.ts';
import type { RecordedResult } from './results.ts';
import { type RecordsInTime, triesOf } from './tries.ts';
import { type ProofWait, waitsOf } from './waits.ts';

/** What is to be proved on a floor and what has been. */
export interface FloorProof {
  readonly floor: string;
  readonly name: string;
  readonly role: 'built on' | 'bound for' | 'other';
  /** The protocol, in its order. */
  readonly checks: readonly ProvedCheck[];
  /** What the floor before could not prove. */
  readonly carryOver: readonly CarryOver[];
  readonly progress: Progress;
  readonly gates: readonly Gate[];
  /** What is left of it, laid out in days. */
  readonly days: PlanOfDays;
  /** Product that was made before anybody released it; none where the floor waits for no release. */
  readonly quarantine?: Quarantine;
}

export interface BookProof {
  readonly floors: readonly FloorProof[];
  readonly punch: readonly PunchPoint[];
  /** What witnesses wrote who had the witness file alone. */
  readonly replies: readonly HeardReply[];
  /** What others own, as it stands. */
  readonly waits: readonly ProofWait[];
  /** What is due after acceptance. */
  readonly afterwards: readonly AfterRow[];
  /** What may be other than it is said: a device whose clock went back. */
  readonly doubts: readonly Problem[];
  /** Results that name no floor or check of the book, and what of others could not be taken. */
  readonly problems: readonly Problem[];
}

/** Tries by floor and check, each list as it was in order. */
const triesByCheck = (results: readonly RecordedResult[]): ReadonlyMap<string, readonly RecordedResult[]> => {
  const tries = new Map<string, RecordedResult[]>();
  for (const one of results) {
    const key = tryKey(one.floor, one.check);
    const known = tries.get(key);
    if (known === undefined) tries.set(key, [one]);
    else known.push(one);
  }
  return tries;
};

const idsOf = (checks: readonly ProvedCheck[]): ReadonlySet<string> =>
  new Set(checks.map(({ check }) => check.id));

const strangeResults = (
  results: readonly RecordedResult[],
  ids: ReadonlyMap<string, ReadonlySet<string>>,
): readonly Problem[] =>
  results.flatMap(({ id, floor, check }) => {
    const known = ids.get(floor);
    if (known === undefined) {
      const rest = { given: floor, allowed: [...ids.keys()] };
      return [proofProblem('PROOF_FLOOR_UNKNOWN', `/records/${id}/body/floor`, rest)];
    }
    if (known.has(check)) return [];
    const rest = { given: check, parts: { floor } };
    return [proofProblem('PROOF_CHECK_UNKNOWN', `/records/${id}/body/check`, rest)];
  });

/** Day on which the line was accepted, by the record of the signature. */
const acceptedOn = (floors: readonly FloorProof[], records: readonly Envelope[]): string | undefined => {
  const signed = floors
    .flatMap(({ gates }) => gates)
    .find(({ gate, passed }) => gate === 'accepted' && passed)?.signed;
  return records.find(({ id }) => id === signed?.record)?.deviceTime.slice(0, 10);
};

/** What was found on a later floor keeps nothing of the one before; what is found at the builder's goes with the line. */
const keeps =
  ({ floor, role }: FloorAssessment) =>
  (point: PunchPoint): boolean =>
    point.floor === undefined || point.floor === floor || role !== 'built on';

/** Every record of a set with its moment. */
export const inTime = (records: readonly Envelope[]): RecordsInTime => ({ records, ...clockOn(records) });

/**
 * What is to be proved on each floor of a book and what its records say of it.
 *
 * Method   checks from the book, each planned for its floor; results judged against them; what the floor that the line was
 *          built on leaves goes to every floor after it
 * Symbols  recorded  the set, whole by verifyRecords, or what counts of it by standOn: all is the same but the earlier
 *                    tries, and that of those nobody is told that they name no check;  from  day on which what is left
 *                    begins, over the book's
 * Returns  floors in the order of the book, and every result that could not be taken
 * Cost     each floor for who looks at it: its utilities, if nobody asked for them yet, then O(checks), with those of the
 *          floor before; O(checks^2) for what waits. Gates, days, what is due afterwards and problems likewise
 */
export const proofOfRecords = (
  book: Book,
  assessment: Assessment,
  recorded: RecordsInTime,
  { from }: { readonly from?: string } = {},
): BookProof => {
  const { records } = recorded;
  const places = placesOfBook(book);
  const moments = claimedMoments(recorded);
  const { results, problems: sourceless } = triesOf(book, recorded);
  const tries = triesByCheck(results);
  const { waits, problems: strangeWaits } = waitsOf(book, records, moments);
  const punch = punchPoints(records);
  // a page shows one floor: the others are worked out once it stands
  const proved = assessment.floors.map((floor) => ({
    floor,
    checks: onDemand(() =>
      plannedChecks(proofContext(book, assessment, floor.floor)).map((check) =>
        provedCheck(check, tries.get(tryKey(floor.floor, check.id)) ?? [], places),
      ),
    ),
  }));
  const first = proved.find(({ floor }) => floor.role === 'built on');
  const floors = proved.map(({ floor, checks: own }): FloorProof => {
    const before = first?.floor === floor ? undefined : first;
    const checks = onDemand(() => (before === undefined ? own() : standing(own(), before.checks())));
    const carryOver = onDemand(() =>
      before === undefined ? [] : carriedOver(before.checks(), before.floor.floor, idsOf(own())),
    );
    const progress = onDemand(() => progressOf(checks()));
    const quarantine = quarantineOf(floor.floor, waits, records);
    const gates = onDemand(() =>
      gatesOf({
        book,
        assessment,
        floor,
        checks: checks(),
        punch: punch.filter(keeps(floor)),
        waits,
        records,
      }),
    );
    const days = onDemand(() =>
      planOfDays({ book, floor, checks: checks(), waits, ...(from === undefined ? {} : { from }) }),
    );
    return {
      floor: floor.floor,
      name: floor.name,
      role: floor.role,
      get checks() {
        return checks();
      },
      get carryOver() {
        return carryOver();
      },
      get progress() {
        return progress();
      },
      get days() {
        return days();
      },
      get gates() {
        return gates();
      },
      ...(quarantine === undefined ? {} : { quarantine }),
    };
  });
  const afterwards = onDemand(() => afterwardsOf(book, records, acceptedOn(floors, records)));
  const problems = onDemand(() => [
    ...strangeResults(results, new Map(proved.map(({ floor, checks }) => [floor.floor, idsOf(checks())]))),
    ...sourceless,
    ...strangeWaits,
    ...proved.flatMap(({ checks }) => checks().flatMap(({ inForce }) => inForce?.problems ?? [])),
  ]);
  return {
    floors,
    punch,
    replies: repliesOf(records, recorded.ends),
    waits,
    get afterwards() {
      return afterwards();
    },
    doubts: moments.doubts,
    get problems() {
      return problems();
    },
  };
};

/** The same of a plain set of records, each at hand. */
export const proofOfBook = (
  book: Book,
  assessment: Assessment,
  records: readonly Envelope[] = [],
  options: { readonly from?: string } = {},
): BookProof => proofOfRecords(book, assessment, inTime(records), options);
