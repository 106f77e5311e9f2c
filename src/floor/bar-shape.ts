import type { Finding } from './assessment.ts';

/** Where the demand stands on the way out from the spine. */
const tickAt = 0.62;
/** The bar never runs into the value beside it. */
const longest = 0.97;

/** A bar as shares of its room, from the spine outwards. */
export interface BarShape {
  readonly tick?: number;
  readonly solid: readonly [number, number];
  /** What is missing, or what is too much. */
  readonly hatched?: readonly [number, number];
  readonly unknown?: readonly [number, number];
  readonly whisker?: readonly [number, number];
  /** The true bar is longer than its room. */
  readonly cut: boolean;
}

/**
 * The bar of a finding.
 *
 * Method   the demand stands at 0.62 of the room; a demand of nothing, or none, lets what is there fill that length.
 *          `least`: solid up to what is there, hatched from there to the tick. `most`: solid up to the tick at
 *          most, hatched what lies beyond it.
 */
export const barShape = (finding: Finding): BarShape => {
  const need = finding.demand.value;
  const have = finding.have.value;
  if (have === undefined || need === undefined) {
    return {
      ...(need === undefined ? {} : { tick: tickAt }),
      solid: [0, have === undefined ? 0 : tickAt],
      ...(have === undefined ? { unknown: [0, tickAt] as const } : {}),
      cut: false,
    };
  }
  const scale = need > 0 ? need : Math.max(Math.abs(have), Number.MIN_VALUE);
  const at = (value: number): number => Math.min(Math.max((value / scale) * tickAt, 0), longest);
  const tick = need > 0 ? tickAt : 0;
  const end = at(have);
  const { low, high } = finding.have;
  const over = finding.sense === 'most';
  const hatched: readonly [number, number] | undefined = over
    ? end > tick
      ? [tick, end]
      : undefined
    : end < tick
      ? [end, tick]
      : undefined;
  return {
    tick,
    solid: [0, over ? Math.min(end, tick) : end],
    ...(hatched === undefined ? {} : { hatched }),
    ...(low === undefined || high === undefined || !(high > low) || at(low) >= longest
      ? {}
      : { whisker: [at(low), at(high)] as const }),
    cut: (have / scale) * tickAt > longest,
  };
};
