import type { Judged } from './check.ts';
import { keeps, type Limit, marginOf } from './limit.ts';
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
}

const meanOf = (readings: readonly TypedReading[]): TypedReading => {
  const of = (end: keyof TypedReading): number =>
    readings.reduce((sum, reading) => sum + reading[end], 0) / readings.length;
  return { value: of('value'), low: of('low'), high: of('high') };
};

/** Whether the whole spread of a reading keeps a limit, or none of it. */
const keptBy = (limit: Limit, { value, low, high }: TypedReading): boolean | undefined => {
  const ends = [low, value, high].map((end) => keeps(limit, end));
  if (ends.every((kept) => kept === true)) return true;
  return ends.every((kept) => kept === false) ? false : undefined;
};

/** The readings of a check against one of its limits: each, or their mean, by their least margin. */
export const heldLimit = (limit: Limit, readings: readonly TypedReading[], judged: Judged): HeldLimit => {
  if (readings.length === 0) return { limit };
  const counted = judged === 'mean' ? [meanOf(readings)] : readings;
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
  };
};
