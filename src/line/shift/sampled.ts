import type { Chances } from './chances.ts';
import type { Draw } from './draw.ts';
import type { StopPattern } from './stop-cause.ts';
import { unitExponential } from './unit-exponential.ts';

const whole = 4294967296;

/** Strictly between 0 and 1. */
const unit = (number: number): number => (number + 0.5) / whole;

/** s; a time that is always the same takes nothing from its stream */
export const sampled = (draw: Draw, chances: Chances, stream: number): (() => number) => {
  if (typeof draw === 'number') return () => draw;
  if (draw.kind === 'exponential') return () => draw.mean * unitExponential(chances.next(stream));
  if (draw.kind === 'uniform') {
    return () => draw.low + (draw.high - draw.low) * unit(chances.next(stream));
  }
  const { quantiles } = draw;
  const pieces = quantiles.length - 1;
  return () => {
    const at = unit(chances.next(stream)) * pieces;
    const i = Math.floor(at);
    return quantiles[i]! + (at - i) * (quantiles[i + 1]! - quantiles[i]!);
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

/**
 * Whether something strikes a bottle that it strikes with a chance, bottle after bottle.
 *
 * Method   bottles to the next one struck are geometric, so a number by chance is wanted for those alone
 * Returns  of the next bottles how many are struck, and what puts it at the start
 */
export const struckBottles = (
  chance: number,
  chances: Chances,
  stream: number,
): { readonly begin: () => void; readonly of: (bottles: number) => number } => {
  if (!(chance > 0)) return { begin: () => undefined, of: () => 0 };
  const scale = chance < 1 ? -1 / Math.log1p(-chance) : 0;
  let spared = 0;
  const next = (): void => {
    spared = Math.floor(scale * unitExponential(chances.next(stream)));
  };
  return {
    begin: next,
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
