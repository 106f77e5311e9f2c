import type { Working } from '../floor/assessment.ts';
import type { Kind } from '../quantity/kinds.ts';
import type { Judged } from './check.ts';
import { keeps, type Limit, marginOf } from './limit.ts';
import { meanReading } from './mean-reading.ts';
import { stopTimeOf } from './stop-time-of.ts';
import type { TypedReading } from './typed-reading.ts';

/** A limit with what was read against it. */
export interface HeldLimit {
  readonly limit: Limit;
  /** The reading that counts: the one nearest to the limit, or the mean. */
  readonly value?: number;
  /** Undefined where the limit is unknown, or the spread of the reading lies on both sides of it. */
  readonly kept?: boolean;
  /** Share of the limit, positive is good. */
  readonly margin?: number;
  /** The sheet that made one figure of all readings. */
  readonly working?: Working;
}

/** Whether the whole spread of a reading keeps a limit, or none of it. */
const keptBy = (limit: Limit, { value, low, high }: TypedReading): boolean | undefined => {
  const ends = [low, value, high].map((end) => keeps(limit, end));
  if (ends.every((kept) => kept === true)) return true;
  return ends.every((kept) => kept === false) ? false : undefined;
};

/** What of the readings is held against a limit, with the sheet that made it. */
const countedOf = (
  readings: readonly TypedReading[],
  judged: Judged,
  kind: Kind,
): { readonly counted: readonly TypedReading[]; readonly working?: Working } => {
  if (judged === 'each') return { counted: readings };
  const used = judged === 'mean' ? meanReading(readings, kind) : stopTimeOf(readings);
  if (used === undefined) return { counted: [] };
  const { reading, working } = used;
  return { counted: [reading], ...(working === undefined ? {} : { working }) };
};

/** The readings of a check against one of its limits: each, or what is made of all, by their least margin. */
export const heldLimit = (limit: Limit, readings: readonly TypedReading[], judged: Judged): HeldLimit => {
  const { counted, working } = countedOf(readings, judged, limit.figure.kind);
  if (counted.length === 0) return { limit };
  const margin = ({ value }: TypedReading): number => marginOf(limit, value) ?? 0;
  const worst = counted.reduce((least, one) => (margin(one) < margin(least) ? one : least));
  const kepts = counted.map((one) => keptBy(limit, one));
  const kept = kepts.includes(false) ? false : kepts.every((one) => one === true) ? true : undefined;
  const own = marginOf(limit, worst.value);
  return {
    limit,
    value: worst.value,
    ...(kept === undefined ? {} : { kept }),
    ...(own === undefined ? {} : { margin: own }),
    ...(working === undefined ? {} : { working }),
  };
};
