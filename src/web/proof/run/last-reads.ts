import type { ProvedCheck } from '../../../proof/index.ts';

/** A condition as it was read last on a floor. */
export interface LastRead {
  readonly read: string;
  /** When, by the device that wrote it. */
  readonly at: string;
}

const triesOf = ({ inForce, earlier }: ProvedCheck): readonly ProvedCheck['earlier'][number][] =>
  inForce === undefined ? earlier : [...earlier, inForce.result];

/** What was read last of each condition of a floor, in any of its checks. */
export const lastReads = (checks: readonly ProvedCheck[]): ReadonlyMap<string, LastRead> => {
  const last = new Map<string, LastRead>();
  for (const { conditions = [], at } of checks.flatMap(triesOf)) {
    for (const { condition, read } of conditions) {
      const known = last.get(condition);
      if (known !== undefined && Date.parse(known.at) >= Date.parse(at)) continue;
      last.set(condition, { read, at });
    }
  }
  return last;
};
