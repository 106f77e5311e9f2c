import type { Limit } from '../../../proof/index.ts';
import type { Kind } from '../../../quantity/index.ts';

/** The ends of a bar that shows readings beside a limit. */
export interface BarScale {
  readonly low: number;
  readonly high: number;
  /** The bar does not begin at nothing: what lies near the limit could not be told apart. */
  readonly cut: boolean;
}

/** Air around the reading that lies furthest from the limit, as a multiple of its distance. */
const air = 1.6;
/** Share of the limit that is always seen on both sides. */
const least = 0.02;
/** Kinds whose nothing is no natural beginning. */
const floating: readonly Kind[] = ['temperature'];
/** K of a temperature that are always seen on both sides. */
const leastKelvin = 5;

/** A scale with the limit in the middle, from nothing where a reading lies far from it. */
export const barScale = ({ figure, share = 0 }: Limit, values: readonly number[]): BarScale | undefined => {
  const { value: bound, kind } = figure;
  if (bound === undefined) return undefined;
  const size = Math.abs(bound);
  const floats = floating.includes(kind);
  const furthest = Math.max(0, ...values.map((value) => Math.abs(value - bound)));
  const half = Math.max(air * furthest, air * share * size, floats ? leastKelvin : least * size);
  if (half === 0) return undefined;
  const fromNothing = !floats && bound > 0 && half >= 0.8 * size;
  return { low: fromNothing ? 0 : bound - half, high: bound + half, cut: !fromNothing };
};

/** Where a value stands on a scale, as a share of its width; what lies outside stands at the end. */
export const placeOn = ({ low, high }: BarScale, value: number): number =>
  Math.min(1, Math.max(0, (value - low) / (high - low)));
