import type { Envelope } from '../record/envelope.ts';
import { type RecordedRun, secondsBetween } from './recorded-runs.ts';

/** What a run counted, in SI. */
export interface RunTally {
  /** Id of its record. */
  readonly id: string;
  readonly floor: string;
  readonly to: string;
  readonly duration: number;
  readonly good: number;
  /** Absent where nobody said that nothing stood. */
  readonly stood?: { readonly machine: number; readonly supply: number };
}

/** A recorded run as figures: what is external of its stops is no time of the line. */
export const runTally = ({ id, body }: Envelope<RecordedRun>): RunTally => {
  const { floor, from, to, bottles, rejected = 0, stops } = body;
  const stood = (external: boolean): number =>
    (stops ?? [])
      .filter((stop) => (stop.external === true) === external)
      .reduce((sum, stop) => sum + secondsBetween(stop.from, stop.to), 0);
  return {
    id,
    floor,
    to,
    duration: secondsBetween(from, to),
    good: bottles - rejected,
    ...(stops === undefined ? {} : { stood: { machine: stood(false), supply: stood(true) } }),
  };
};
