import type { JudgedResult, ProvedCheck } from '../../../proof/index.ts';

/** A condition as it was read last on a floor. */
export interface LastRead {
  readonly read: string;
  /** When, by the device that wrote it. */
  readonly at: string;
}

const triesOf = ({ inForce, earlier }: ProvedCheck): readonly JudgedResult[] =>
  inForce === undefined ? earlier : [...earlier, inForce];

/** What was read last of each condition of a floor, in any of its checks. */
export const lastReads = (checks: readonly ProvedCheck[]): ReadonlyMap<string, LastRead> => {
  const last = new Map<string, LastRead>();
  for (const { result } of checks.flatMap(triesOf)) {
    for (const { condition, read } of result.conditions ?? []) {
      const known = last.get(condition);
      if (known !== undefined && Date.parse(known.at) >= Date.parse(result.at)) continue;
      last.set(condition, { read, at: result.at });
    }
  }
  return last;
};
