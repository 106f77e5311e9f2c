import type { Book } from '../book/index.ts';
import type { FloorAssessment } from '../floor/assessment.ts';
import { byText } from '../record/heads.ts';
import { crewOrder } from './crew-order.ts';
import { criticalPath } from './critical-path.ts';
import { dayNumber, dayText } from './day-number.ts';
import { placeFigure } from './place-figure.ts';
import { isOverdue, isTimed, type PlanJob, planJobs } from './plan-jobs.ts';
import type { ProvedCheck } from './proved-check.ts';
import { type Stage, stages } from './stage.ts';
import { isOver, type ProofWait } from './waits.ts';
import { workingCalendar } from './working-calendar.ts';

const day = 86_400;
/** Working time in a day where the book says none, common practice. */
const usualHours = 8 * 3600;

/** One step of a plan: a check that is to be done, a result that comes later, or what others own. */
export interface PlanStep {
  readonly sort: 'check' | 'result' | 'wait';
  /** Id of the check, or tag of the wait. */
  readonly of: string;
  /** s from midnight before the first day */
  readonly start: number;
  readonly end: number;
  /** s by which it may end later before the signature does, the order of the crew kept. */
  readonly slack: number;
  readonly critical: boolean;
  /** How long it takes is common practice, not the book's. */
  readonly usual: boolean;
  /** Days of start and end, where the first day is known. */
  readonly from?: string;
  readonly to?: string;
}

/** What is left to be done on a floor, laid out in days. */
export interface PlanOfDays {
  /** First day. */
  readonly from?: string;
  readonly crew: number;
  /** s of work in a day */
  readonly hours: number;
  /** Steps by their start. */
  readonly steps: readonly PlanStep[];
  /** When everything up to a stage is over at the earliest, for the stages that have anything left. */
  readonly stages: readonly { readonly stage: Stage; readonly end: number; readonly day?: string }[];
  /** s from midnight before the first day until the signature can be given. */
  readonly end: number;
  readonly day?: string;
  /** s of work by hand in it. */
  readonly work: number;
  /** The chain that decides the end. */
  readonly path: readonly Pick<PlanStep, 'sort' | 'of'>[];
  /** Waits of which one day more moves the signature, the tightest first. */
  readonly moving: readonly string[];
  /** Waits of which nobody says how long they take: the end is no earlier than shown. */
  readonly untimed: readonly string[];
  /** Waits whose day is past before the plan begins. */
  readonly overdue: readonly string[];
}

export interface PlanGround {
  readonly book: Book;
  readonly floor: Pick<FloorAssessment, 'floor' | 'role'>;
  readonly checks: readonly ProvedCheck[];
  readonly waits: readonly ProofWait[];
  /** Day on which the rest begins, over what the book says. */
  readonly from?: string;
}

const isStep = ({ is }: PlanJob): boolean => is !== 'begin' && is !== 'over';

/** Day on which a moment lies; the end of a day is still that day. */
const dayAt = (first: number | undefined, moment: number, end: boolean): string | undefined =>
  first === undefined
    ? undefined
    : dayText(first + (end ? Math.max(0, Math.ceil(moment / day) - 1) : moment / day));

/** How work goes on on a floor, by the book. */
const workOn = ({ book, floor, from: asked }: PlanGround) => {
  const place = (book.floors ?? []).findIndex(({ tag }) => tag === floor.floor);
  const path = `/floors/${place}/work`;
  const { work = {} } = book.floors?.[place] ?? {};
  const { runOff, visit } = book.about?.dates ?? {};
  const own = work.from ?? (floor.role === 'built on' ? runOff : visit);
  const from = asked ?? own;
  const first = dayNumber(from);
  // what others own goes on from the day of the plan, work by hand from the day on which the crew is there
  const opens = Math.max(0, (dayNumber(own) ?? first ?? 0) - (first ?? 0)) * day;
  const hours = placeFigure(book, `${path}/hours`, 'time').value ?? usualHours;
  const calendar = workingCalendar({
    hours,
    weekends: work.weekends === 'worked',
    ...(first === undefined ? {} : { from: first }),
  });
  return {
    from: first === undefined ? undefined : from,
    first,
    opens,
    hours,
    crew: work.crew ?? 1,
    calendar,
  };
};

/**
 * What is left on a floor as a plan of days.
 *
 * Method   the crew takes the steps in the order of the protocol as they can begin; then the critical path with that order
 *          kept, so that a slack is what may be lost without anybody changing places
 * Returns  steps with days, the end of each stage, the chain that decides the end and the waits that move it
 * Assumes  what is promised for a day is there at its end; what others own goes on at night and over Sundays; no holidays;
 *          one person a check
 * Cost     O(steps^2)
 * Source   critical path method; durations of the book, else common practice, marked
 */
export const planOfDays = (ground: PlanGround): PlanOfDays => {
  const { floor, checks, waits } = ground;
  const { from, first, opens, hours, crew, calendar } = workOn(ground);
  const own = waits.filter((wait) => wait.floor === floor.floor && !isOver(wait));
  const jobs = planJobs(checks, own, floor.role === 'built on', calendar, first, opens);
  const byId = new Map(jobs.map((job) => [job.id, job]));
  const { timed, end, path } = criticalPath(crewOrder(jobs, crew, calendar.next));
  const onDay = (moment: number, last: boolean) => dayAt(first, moment, last);
  const steps = jobs.filter(isStep).map(({ id, is, of, byHand, usual }): PlanStep => {
    const at = timed.get(id)!;
    const start = byHand ? calendar.next(at.start) : at.start;
    const begins = onDay(start, false);
    const ends = onDay(at.end, true);
    return {
      sort: is as PlanStep['sort'],
      of,
      start,
      end: at.end,
      slack: at.slack,
      critical: path.includes(id),
      usual,
      ...(begins === undefined ? {} : { from: begins }),
      ...(ends === undefined ? {} : { to: ends }),
    };
  });
  const moving = steps
    .filter(({ sort, slack }) => sort === 'wait' && slack < day)
    .sort((a, b) => a.slack - b.slack || byText(a.of, b.of));
  const withWork = stages.filter((stage) =>
    checks.some(({ check }) => check.stage === stage && byId.has(`check ${check.id}`)),
  );
  const last = onDay(end, true);
  return {
    crew,
    hours,
    end,
    steps: steps.toSorted((a, b) => a.start - b.start || a.end - b.end),
    stages: withWork.map((stage) => {
      const over = timed.get(`over ${stage}`)!.end;
      const on = onDay(over, true);
      return { stage, end: over, ...(on === undefined ? {} : { day: on }) };
    }),
    work: jobs.reduce((sum, { work }) => sum + work, 0),
    path: path.flatMap((id) => {
      const job = byId.get(id)!;
      return isStep(job) ? [{ sort: job.is as PlanStep['sort'], of: job.of }] : [];
    }),
    moving: moving.map(({ of }) => of),
    untimed: own.filter((wait) => !isTimed(wait, first)).map(({ wait }) => wait),
    overdue: own.filter((wait) => isOverdue(wait, first)).map(({ wait }) => wait),
    ...(from === undefined ? {} : { from }),
    ...(last === undefined ? {} : { day: last }),
  };
};
