import type { Problem } from '../quantity/problem.ts';
import type { Envelope } from '../record/envelope.ts';
import { archiveProblem } from './problems.ts';

/** Records wait on a device and are written in another order by minutes; a day is a clock. In milliseconds. */
const tolerated = 24 * 3600 * 1000;

/**
 * Writers whose clock was set back: a record that claims an earlier day than one before it. The chain gives the order,
 * so nothing is lost by it; the times alone are in doubt. Each writer's largest step is told.
 *
 * Assumes  records of each writer in the order of their chain
 */
export const clockProblems = (records: readonly Envelope[]): readonly Problem[] => {
  const latest = new Map<string, Envelope>();
  const worst = new Map<string, { readonly back: number; readonly problem: Problem }>();
  for (const record of records) {
    const { writer, sequence, deviceTime } = record;
    const before = latest.get(writer);
    const back = before === undefined ? 0 : Date.parse(before.deviceTime) - Date.parse(deviceTime);
    if (before === undefined || back < 0) latest.set(writer, record);
    else if (back > tolerated && back > (worst.get(writer)?.back ?? 0)) {
      const parts = { writer, sequence, before: before.deviceTime };
      const rest = { given: deviceTime, parts };
      worst.set(writer, { back, problem: archiveProblem('ARCHIVE_CLOCK_BACK', '/records', rest) });
    }
  }
  return [...worst.values()].map(({ problem }) => problem);
};
