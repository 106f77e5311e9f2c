import type { Book } from '../book/index.ts';
import type { Working } from '../floor/assessment.ts';
import { runSheet } from '../sheets/frame.ts';
import { efficiencyByOwnerSheet } from '../sheets/rate/efficiency-by-owner.ts';
import { meanOfRunSheet } from '../sheets/rate/mean-of-run.ts';
import { dayNumber } from './day-number.ts';
import { placeFigure } from './place-figure.ts';
import type { RunTally } from './run-tally.ts';

/** What a week after acceptance was to reach, and what its runs came to. */
export interface RampUp {
  /** Bottles a second. */
  readonly rate?: number;
  readonly efficiency?: number;
  /** Ids of the records of the runs of the week. */
  readonly runs: readonly string[];
  readonly reached?: { readonly rate: number; readonly working: Working };
  /** Absent where a run of the week came without its list of stops. */
  readonly ran?: { readonly share: number; readonly working: Working };
  /** Absent while the week has no run, or one that tells too little. */
  readonly met?: boolean;
}

const week = 7;

/**
 * The target of a week against the runs of that week taken together.
 *
 * Method   runs that ended in the seven days up to the day on which it is due, after the acceptance: good bottles over the
 *          whole of their time, and the share of it in which the line ran
 * Symbols  runs  on the floor that the line is bound for;  accepted, due  days by number
 */
export const rampUpOf = (
  book: Book,
  path: string,
  runs: readonly RunTally[],
  { accepted, due }: { readonly accepted: number; readonly due: number },
): RampUp => {
  const rate = placeFigure(book, `${path}/rate`, 'rate').value;
  const efficiency = placeFigure(book, `${path}/efficiency`, 'ratio').value;
  const own = runs.filter(({ to, duration }) => {
    const day = dayNumber(to.slice(0, 10));
    return duration > 0 && day !== undefined && day >= accepted && day > due - week && day <= due;
  });
  const sum = (of: (run: RunTally) => number): number => own.reduce((total, run) => total + of(run), 0);
  const [good, duration] = [sum((run) => run.good), sum((run) => run.duration)];
  const records = { runs: own.map(({ id }) => id) };
  const target = {
    ...(rate === undefined ? {} : { rate }),
    ...(efficiency === undefined ? {} : { efficiency }),
  };
  const mean = own.length === 0 ? undefined : runSheet(meanOfRunSheet, { bottles: good, duration });
  if (mean?.ok !== true) return { ...target, ...records };
  const told = own.every(({ stood }) => stood !== undefined);
  const inputs = {
    duration,
    setRate: rate ?? 1,
    good,
    machine: sum(({ stood }) => stood?.machine ?? 0),
    supply: sum(({ stood }) => stood?.supply ?? 0),
  };
  const owners = told ? runSheet(efficiencyByOwnerSheet, inputs) : undefined;
  const reached = mean.value.outputs.rate;
  const share = owners?.ok === true ? owners.value.outputs.technicalAvailability : undefined;
  const fast = rate === undefined ? true : reached >= rate;
  const steady = efficiency === undefined ? true : share === undefined ? undefined : share >= efficiency;
  const met = !fast || steady === false ? false : steady;
  const workingOf = (
    { id: sheet, version }: { readonly id: string; readonly version: number },
    given: Working['inputs'],
    { outputs, notes }: { readonly outputs: object; readonly notes: Working['notes'] },
  ): Working => ({ sheet, version, inputs: given, outputs: { ...outputs }, notes, from: {} });
  return {
    ...target,
    ...records,
    reached: { rate: reached, working: workingOf(meanOfRunSheet, { bottles: good, duration }, mean.value) },
    ...(share === undefined || owners?.ok !== true
      ? {}
      : { ran: { share, working: workingOf(efficiencyByOwnerSheet, inputs, owners.value) } }),
    ...(met === undefined || (rate === undefined && efficiency === undefined) ? {} : { met }),
  };
};
