import type { PlanOfDays, PlanStep, ProvedCheck } from '../../../proof/index.ts';

const day = 86_400;

/** One bar of the plan: what is left of a stage, a result that comes later, or a wait. */
export interface DayRow {
  readonly sort: 'stage' | 'result' | 'wait';
  /** Name of the stage, id of the check or tag of the wait. */
  readonly of: string;
  /** s from midnight before the first day */
  readonly start: number;
  readonly end: number;
  /** Days of start and end, counted from 1. */
  readonly first: number;
  readonly last: number;
  /** Calendar days, where the first is known. */
  readonly from?: string;
  readonly to?: string;
  /** A part of the chain that decides the end is in it. */
  readonly critical: boolean;
  /** Whole days by which all of it may be later before the end is. */
  readonly spare: number;
}

const rowOf = (sort: DayRow['sort'], of: string, steps: readonly PlanStep[]): DayRow => {
  const start = Math.min(...steps.map((one) => one.start));
  const end = Math.max(...steps.map((one) => one.end));
  const { to } = steps.find((one) => one.end === end)!;
  // what is promised for a day comes at its end, which is already the next day's beginning
  const from = start === end ? to : steps.find((one) => one.start === start)!.from;
  // what ends at midnight ends on the day before
  const last = Math.max(1, Math.ceil(end / day));
  return {
    sort,
    of,
    start,
    end,
    first: Math.min(Math.floor(start / day) + 1, last),
    last,
    critical: steps.some(({ critical }) => critical),
    spare: Math.floor(Math.min(...steps.map(({ slack }) => slack)) / day),
    ...(from === undefined ? {} : { from }),
    ...(to === undefined ? {} : { to }),
  };
};

/** The bars of a plan: a stage for all that is done by hand in it, and each thing of others by itself, by their start. */
export const dayRows = (
  { steps }: Pick<PlanOfDays, 'steps'>,
  checks: readonly ProvedCheck[],
): readonly DayRow[] => {
  const stageOf = new Map<string, string>(checks.map(({ check }) => [check.id, check.stage]));
  const rows = new Map<string, { readonly row: [DayRow['sort'], string]; readonly steps: PlanStep[] }>();
  for (const step of steps) {
    const row: [DayRow['sort'], string] =
      step.sort === 'check' ? ['stage', stageOf.get(step.of) ?? step.of] : [step.sort, step.of];
    const key = row.join(' ');
    const known = rows.get(key);
    if (known === undefined) rows.set(key, { row, steps: [step] });
    else known.steps.push(step);
  }
  return [...rows.values()]
    .map(({ row: [sort, of], steps: own }) => rowOf(sort, of, own))
    .sort((a, b) => a.start - b.start || a.end - b.end);
};
