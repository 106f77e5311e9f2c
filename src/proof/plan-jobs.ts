import type { Job } from './crew-order.ts';
import { plainSpan } from './critical-path.ts';
import { dayNumber } from './day-number.ts';
import type { GateName } from './gate-names.ts';
import { isPassed, isSettled, type ProvedCheck } from './proved-check.ts';
import { type Stage, stageOrder, stages } from './stage.ts';
import { usualDuration, usualLate } from './usual-durations.ts';
import type { ProofWait } from './waits.ts';
import type { WorkingCalendar } from './working-calendar.ts';

const day = 86_400;

/** A step of a plan with what it is. */
export interface PlanJob extends Job {
  readonly is: 'check' | 'result' | 'wait' | 'begin' | 'over';
  /** Id of the check, tag of the wait, or the stage. */
  readonly of: string;
  /** How long it takes is ours, not the book's. */
  readonly usual: boolean;
  /** s of work by hand. */
  readonly work: number;
}

const jobId = (is: PlanJob['is'], of: string): string => `${is} ${of}`;

/** Nothing of its own takes time. */
const still = { span: plainSpan(0), byHand: false, usual: false, work: 0 } as const;

/** The stage that may not begin before a gate is passed; none where it is the last of its floor. */
const stageBehind: Readonly<Record<GateName, Stage | undefined>> = {
  'ready to run off': 'stops',
  'ready to ship': undefined,
  'ready to travel': 'placed',
  'ready to energise': 'energised',
  'ready to produce': 'product',
  accepted: undefined,
};

type Milestone = Stage | GateName;

const isStage = (milestone: Milestone): milestone is Stage => stageOrder(milestone as Stage) >= 0;

/** The stage that may not begin before a milestone; none where it is the signature alone. */
const heldBy = (milestone: Milestone): Stage | undefined =>
  isStage(milestone) ? milestone : stageBehind[milestone];

/** The last stage that is over with a milestone; none where it is passed before the first. */
const overWith = (milestone: Milestone): Stage | undefined => {
  if (isStage(milestone)) return milestone;
  const next = stageBehind[milestone];
  return next === undefined ? stages.at(-1) : stages[stageOrder(next) - 1];
};

/** Moment of the end of a day, in s from midnight before the first. */
const endOf = (text: string | undefined, first: number | undefined): number | undefined => {
  const number = dayNumber(text);
  return number === undefined || first === undefined ? undefined : Math.max(0, (number + 1 - first) * day);
};

/** What is left of a check: work by hand, a result that comes later, or both. */
const checkJobs = (
  { check, state, inForce }: ProvedCheck,
  { over, begun }: WorkingCalendar,
  first: number | undefined,
): readonly PlanJob[] => {
  const awaited = state === 'waits';
  const seconds = check.duration ?? usualDuration(check.sort);
  const work: PlanJob = {
    is: 'check',
    of: check.id,
    id: jobId('check', check.id),
    after: [jobId('begin', check.stage), ...check.after.map((id) => jobId('check', id))],
    span: { over: (start) => over(start, seconds), begun: (end) => begun(end, seconds) },
    byHand: true,
    usual: check.duration === undefined,
    work: seconds,
  };
  const due = endOf(inForce?.result.late?.due, first);
  const result = (awaited || check.late !== undefined) && {
    ...still,
    is: 'result' as const,
    of: check.id,
    id: jobId('result', check.id),
    after: awaited ? [] : [work.id],
    ...(awaited && due !== undefined
      ? { notBefore: due }
      : { span: plainSpan(usualLate[check.late?.who ?? 'laboratory']), usual: true }),
  };
  return [...(awaited ? [] : [work]), ...(result === false ? [] : [result])];
};

/** Over on its day where one was promised, else as long after its begin as it takes. */
const waitJob = (wait: ProofWait, first: number | undefined): PlanJob => {
  const { duration = 0 } = wait;
  const due = wait.state === 'refused' ? undefined : endOf(wait.due, first);
  const asked = wait.state === 'asked' ? dayNumber(wait.asked) : undefined;
  const begun = asked === undefined || first === undefined ? undefined : (asked - first) * day;
  const known = due ?? (begun === undefined ? undefined : Math.max(0, begun + duration));
  const stage = wait.after === undefined ? undefined : overWith(wait.after);
  return {
    ...still,
    is: 'wait',
    of: wait.wait,
    id: jobId('wait', wait.wait),
    after: stage === undefined ? [] : [jobId('over', stage)],
    ...(known === undefined ? { span: plainSpan(duration) } : { notBefore: known }),
  };
};

/** Whether anybody says when a wait is over. */
export const isTimed = ({ due, duration }: ProofWait, first: number | undefined): boolean =>
  duration !== undefined || endOf(due, first) !== undefined;

/** Whether its day is past before the plan begins. */
export const isOverdue = ({ due }: ProofWait, first: number | undefined): boolean => {
  const number = dayNumber(due);
  return number !== undefined && first !== undefined && number < first;
};

/**
 * The steps that are left on a floor, each with those that it comes after.
 *
 * Method   a check comes after those that it names and after the begin of its stage; that waits for the begin of the one
 *          before, hold points of earlier stages, results that it may not outrun and what others own
 * Symbols  left  checks that are not passed where the line was built, not settled where it is bound for;  first  day of the plan;
 *          opens  s from midnight before it until anybody works on this floor
 * Returns  jobs in the order of the protocol; what a job names and is no longer to be done is left out
 * Cost     O(checks times hold points)
 */
export const planJobs = (
  checks: readonly ProvedCheck[],
  waits: readonly ProofWait[],
  builder: boolean,
  calendar: WorkingCalendar,
  first: number | undefined,
  opens: number,
): readonly PlanJob[] => {
  const left = checks.filter((one) => !(builder ? isPassed(one) : isSettled(one)));
  const jobs = left.map((one) => ({ one, jobs: checkJobs(one, calendar, first) }));
  const holds = left.filter(({ check, state }) => check.point === 'hold' && state !== 'waits');
  const ofStages = stages.flatMap((stage, i): readonly PlanJob[] => {
    const before = stages[i - 1];
    const mine = jobs.filter(({ one }) => one.check.stage === stage);
    const outrun = jobs
      .filter(({ one: { check } }) => (check.late?.before ?? 'handover') === stage)
      .flatMap((each) => each.jobs.filter(({ is }) => is === 'result'));
    return [
      {
        ...still,
        is: 'begin',
        of: stage,
        id: jobId('begin', stage),
        notBefore: opens,
        after: [
          ...(before === undefined ? [] : [jobId('begin', before)]),
          ...holds
            .filter(({ check }) => stageOrder(check.stage) < i)
            .map(({ check }) => jobId('check', check.id)),
          ...outrun.filter(({ of }) => !mine.some(({ one }) => one.check.id === of)).map(({ id }) => id),
          ...waits
            .filter((wait) => wait.before !== undefined && heldBy(wait.before) === stage)
            .map(({ wait }) => jobId('wait', wait)),
        ],
      },
      ...mine.flatMap((each) => each.jobs),
      {
        ...still,
        is: 'over',
        of: stage,
        id: jobId('over', stage),
        after: [
          ...(before === undefined ? [] : [jobId('over', before)]),
          ...mine.flatMap((each) => each.jobs.filter(({ is }) => is === 'check').map(({ id }) => id)),
        ],
      },
    ];
  });
  const all = [...waits.map((wait) => waitJob(wait, first)), ...ofStages];
  const known = new Set(all.map(({ id }) => id));
  return all.map((job) => ({ ...job, after: [...new Set(job.after.filter((id) => known.has(id)))] }));
};
