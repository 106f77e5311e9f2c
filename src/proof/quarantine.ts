import type { Envelope } from '../record/envelope.ts';
import { runsOf } from './recorded-runs.ts';
import { isOver, type ProofWait } from './waits.ts';

/** Product that was made on a floor before anybody released it. */
export interface Quarantine {
  /** Bottles of the runs before the release. */
  readonly made: number;
  /** Of these those that the records of the runs say are set aside. */
  readonly setAside: number;
  /** Ids of the records of these runs. */
  readonly runs: readonly string[];
  /** Day of the release; none: it is still waited for. */
  readonly released?: string;
}

/**
 * What was made before release, counted.
 *
 * Method   runs that ended on the day of the release or before; all of them while it is waited for
 * Returns  undefined where the floor waits for no release
 */
export const quarantineOf = (
  floor: string,
  waits: readonly ProofWait[],
  records: readonly Envelope[],
): Quarantine | undefined => {
  const releases = waits.filter((wait) => wait.kind === 'release' && wait.floor === floor);
  if (releases.length === 0) return undefined;
  const days = releases.map((wait) => (isOver(wait) ? wait.on : undefined));
  const open = days.includes(undefined);
  const released = open
    ? undefined
    : days
        .flatMap((day) => day ?? [])
        .toSorted()
        .at(-1);
  const runs = runsOf(records).filter(
    ({ body }) => body.floor === floor && (released === undefined || body.to.slice(0, 10) <= released),
  );
  const sum = (of: (run: (typeof runs)[number]['body']) => number): number =>
    runs.reduce((total, { body }) => total + of(body), 0);
  return {
    made: sum(({ bottles }) => bottles),
    setAside: sum(({ quarantined = 0 }) => quarantined),
    runs: runs.map(({ id }) => id),
    ...(released === undefined ? {} : { released }),
  };
};
