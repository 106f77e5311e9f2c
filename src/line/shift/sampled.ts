import type { Chances } from './chances.ts';
import type { Draw } from './draw.ts';
import type { StopPattern } from './stop-cause.ts';
import { unitExponential } from './unit-exponential.ts';

const whole = 4294967296;

/** Strictly between 0 and 1. */
const unit = (number: number): number => (number + 0.5) / whole;

/** s, from a whole number of 32 bits by chance */
const timeOf = (draw: Exclude<Draw, number>): ((number: number) => number) => {
  if (draw.kind === 'exponential') return (number) => draw.mean * unitExponential(number);
  if (draw.kind === 'uniform') return (number) => draw.low + (draw.high - draw.low) * unit(number);
  const { quantiles } = draw;
  const pieces = quantiles.length - 1;
  return (number) => {
    const at = unit(number) * pieces;
    const i = Math.floor(at);
    return quantiles[i]! + (at - i) * (quantiles[i + 1]! - quantiles[i]!);
  };
};

/** s; a time that is always the same takes nothing from its stream */
export const sampled = (draw: Draw, chances: Chances, stream: number): (() => number) => {
  if (typeof draw === 'number') return () => draw;
  const time = timeOf(draw);
  return () => time(chances.next(stream));
};

/** The same times, one after the other into a part of a list. */
export const sampledInto = (
  draw: Draw,
  chances: Chances,
  stream: number,
): ((into: Float64Array, from: number, to: number) => void) => {
  if (typeof draw === 'number') return (into, from, to) => into.fill(draw, from, to);
  const time = timeOf(draw);
  return (into, from, to) => {
    chances.fill(stream, into, from, to);
    for (let i = from; i < to; i++) into[i] = time(into[i]!);
  };
};

/** s */
export const meanOf = (draw: Draw): number => {
  if (typeof draw === 'number') return draw;
  if (draw.kind === 'exponential') return draw.mean;
  if (draw.kind === 'uniform') return 0.5 * (draw.low + draw.high);
  const { quantiles } = draw;
  const ends = 0.5 * (quantiles[0]! + quantiles[quantiles.length - 1]!);
  return (quantiles.reduce((sum, at) => sum + at, 0) - ends) / (quantiles.length - 1);
};

const exponential: StopPattern = { kind: 'exponential' };

/**
 * Times between stops, or to clear them, by their pattern.
 *
 * Method   geometric, in steps of d: 1 + floor(E/-ln(1 - p)) of them with E of mean 1 and p = d/mean; what was cleared
 *          works for a step before it can stop again, and a stop lasts one
 * Symbols  mean  scalar  s; geometric: >= d
 */
export const stopTimes = (
  mean: number,
  pattern: StopPattern = exponential,
  chances: Chances,
  stream: number,
): (() => number) => {
  if (pattern.kind === 'constant') return () => mean;
  if (pattern.kind === 'exponential') return () => mean * unitExponential(chances.next(stream));
  const { step } = pattern;
  const chance = step / mean;
  if (!(chance < 1)) return () => step;
  const scale = -1 / Math.log1p(-chance);
  return () => step * (1 + Math.floor(scale * unitExponential(chances.next(stream))));
};

/** Bottles that something strikes, bottle after bottle. */
export interface StruckBottles {
  /** Puts it at the start of a shift. */
  readonly begin: () => void;
  /** Of so many bottles more, how many are struck. */
  readonly of: (bottles: number) => number;
  /** Bottles that come before the next one that is struck, at least. */
  readonly spared: () => number;
}

/**
 * Whether something strikes a bottle that it strikes with a chance, bottle after bottle.
 *
 * Method   bottles to the next one struck are geometric, so a number by chance is wanted for those alone
 */
export const struckBottles = (chance: number, chances: Chances, stream: number): StruckBottles => {
  if (!(chance > 0)) {
    return { begin: () => undefined, of: () => 0, spared: () => Number.POSITIVE_INFINITY };
  }
  const scale = chance < 1 ? -1 / Math.log1p(-chance) : 0;
  let spared = 0;
  const next = (): void => {
    spared = Math.floor(scale * unitExponential(chances.next(stream)));
  };
  return {
    begin: next,
    spared: () => spared,
    of: (bottles) => {
      if (spared >= bottles) {
        spared -= bottles;
        return 0;
      }
      let struck = 0;
      let left = bottles;
      while (spared < left) {
        struck += 1;
        left -= spared + 1;
        next();
      }
      spared -= left;
      return struck;
    },
  };
};
