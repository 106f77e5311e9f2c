import type { EnteredBottle, SlipGround } from './entered-bottle.ts';
import {
  nearest,
  others,
  overflows,
  type Seen,
  type SeenBottles,
  type SeenValues,
  type Standing,
  timedAs,
} from './seen-bottles.ts';

/** What a value should be, how far a good one may lie from it, and on how many bottles that rests. */
export interface Expectation {
  readonly expected: number;
  readonly within: number;
  readonly bottles: number;
}

/** Bottles of a lane that a bottle is compared with: the next ones to it, so that a slow drift is no slip. */
const compared = 12;
/** From here on the spread of the bottles themselves says how far a good one may lie. */
const enough = 6;
/** A good bottle lies within six standard deviations of the middle. */
const deviations = 6;
/** Widths as a share of what is expected, where little is known; common practice. */
const netByFew = 0.012;
const netByMany = 0.004;
const netByBook = 0.12;
const overflowed = 0.04;
const timeByFew = 0.15;
const timeByMany = 0.08;
const tareByFew = 0.15;
const tareByMany = 0.03;
/** A tare is a bottle: glass of one mould differs by a few per cent, and nobody minds a gram, kg. */
const leastTareWidth = 2e-3;
/** How much of the way from one count to another the comparison may miss: the after-run does not grow with the count. */
const awayFromPreset = 0.15;
/** Of what the counts between two presets give by the book: a meter whose pulses nobody checked. */
const pulseShare = 0.05;
const farPreset = 0.5;

const median = (values: readonly number[]): number => {
  const sorted = values.toSorted((a, b) => a - b);
  const half = sorted.length >> 1;
  return sorted.length % 2 === 1 ? sorted[half]! : (sorted[half - 1]! + sorted[half]!) / 2;
};

/** Standard deviation by the median distance from the median: one slip among the others does not widen it. */
const robustDeviation = (values: readonly number[]): number => {
  const middle = median(values);
  // 0.6745: the upper quartile of the normal distribution
  return median(values.map((value) => Math.abs(value - middle))) / 0.6745;
};

/** None where there are two that contradict each other: one of them is the slip, and nobody can tell which. */
const around = (values: readonly number[], few: number, many: number): Expectation | undefined => {
  if (values.length === 0) return undefined;
  const expected = median(values);
  if (values.length === 2 && Math.abs(values[0]! - expected) > few * Math.abs(expected)) return undefined;
  const share = values.length < enough ? few : many;
  const own = values.length < enough ? 0 : deviations * robustDeviation(values);
  return { expected, within: Math.max(share * Math.abs(expected), own), bottles: values.length };
};

/** What a count gives by bottles of two other counts: the after-run does not grow with the count. */
const onLine = (
  seen: readonly Seen[],
  [near, far]: readonly [number, number],
  preset: number,
  few: number,
  many: number,
): Expectation | undefined => {
  const [atNear, atFar] = [near, far].map((count) =>
    around(
      seen.filter((one) => one.preset === count).map(({ value }) => value),
      few,
      many,
    ),
  );
  if (atNear === undefined || atFar === undefined) return undefined;
  const way = (preset - near) / (far - near);
  return {
    expected: atNear.expected + way * (atFar.expected - atNear.expected),
    within: Math.abs(1 - way) * atNear.within + Math.abs(way) * atFar.within,
    bottles: atNear.bottles + atFar.bottles,
  };
};

interface Carrying {
  readonly standing: Standing;
  readonly preset: number;
  readonly few: number;
  readonly many: number;
  /** What one count adds, where the book says so. */
  readonly perCount?: number | undefined;
}

/**
 * What a value is at a count: by bottles of that count, else on the line through two others, else by what the counts
 * between add, or in proportion.
 */
const carried = (
  { all, byPreset }: SeenValues,
  { standing, preset, few, many, perCount }: Carrying,
): Expectation | undefined => {
  const byAlike = around(
    nearest(byPreset.get(preset) ?? [], standing, compared).map(({ value }) => value),
    few,
    many,
  );
  if (byAlike !== undefined) return byAlike;
  const rest = others(all, standing);
  const seen = nearest(all, standing, compared);
  const counts = [...new Set(rest.map((one) => one.preset))].toSorted(
    (a, b) => Math.abs(a - preset) - Math.abs(b - preset),
  );
  const [near, far] = counts.filter((count) => count !== preset);
  if (near !== undefined && far !== undefined) {
    const found = onLine(rest, [near, far], preset, few, many);
    if (found !== undefined) return found;
  }
  const about = around(
    seen.map(({ value, preset: at }) =>
      perCount === undefined ? (value * preset) / at : value + (preset - at) * perCount,
    ),
    few,
    many,
  );
  if (about === undefined) return undefined;
  if (perCount !== undefined) {
    const counted = Math.max(...seen.map(({ preset: at }) => Math.abs(preset - at))) * perCount;
    return { ...about, within: about.within + pulseShare * counted };
  }
  // from a count that is far away nothing more is missed than this: else a count tenfold would fit anything
  const away = Math.min(farPreset, Math.max(...seen.map(({ preset: at }) => Math.abs(preset / at - 1))));
  return { ...about, within: about.within + awayFromPreset * away * Math.abs(about.expected) };
};

/** A bottle, with the bottles that it is compared with. */
export interface Compared {
  readonly bottle: EnteredBottle;
  readonly seen: SeenBottles;
  readonly standing: Standing;
  readonly ground: SlipGround;
}

/** Mass that a lane is likely to have put in at a count. */
export const expectedNet = (
  lane: string,
  preset: number,
  { bottle, seen, standing, ground }: Compared,
): Expectation | undefined => {
  const { level, density } = ground;
  if (overflows(bottle)) {
    const full = nearest(seen.full, standing, compared).map(({ value }) => value);
    if (full.length > 0) return around(full, overflowed, overflowed);
    return level === undefined || density === undefined
      ? undefined
      : { expected: level * density, within: netByBook * level * density, bottles: 0 };
  }
  const pulses = ground.lanes.find(({ tag }) => tag === lane)?.pulses;
  const perCount = pulses === undefined || density === undefined ? undefined : density / pulses;
  const own = seen.nets.get(lane);
  if (own !== undefined) {
    const found = carried(own, { standing, preset, few: netByFew, many: netByMany, perCount });
    if (found !== undefined) return found;
  }
  if (perCount === undefined) return undefined;
  const expected = perCount * preset;
  return { expected, within: netByBook * expected, bottles: 0 };
};

/** Time that a lane is likely to have taken to a count, by bottles that were filled in the same way. */
export const expectedTime = (
  lane: string,
  preset: number,
  { bottle, seen, standing }: Compared,
): Expectation | undefined => {
  const own = seen.times.get(timedAs(lane, bottle));
  return own === undefined ? undefined : carried(own, { standing, preset, few: timeByFew, many: timeByMany });
};

/** Mass that an empty bottle is likely to have. */
export const expectedTare = ({ seen, standing, ground }: Compared): Expectation | undefined => {
  const byOthers = around(
    nearest(seen.tares, standing, compared).map(({ value }) => value),
    tareByFew,
    tareByMany,
  );
  const { emptyMass } = ground;
  const byBook =
    emptyMass === undefined ? undefined : { expected: emptyMass, within: tareByFew * emptyMass, bottles: 0 };
  const found = byOthers ?? byBook;
  return found === undefined ? undefined : { ...found, within: Math.max(found.within, leastTareWidth) };
};
