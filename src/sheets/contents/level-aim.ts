import { normalCdf, normalDensity } from '../../statistics/normal.ts';

/** What a mean over the level, in standard deviations of delivered less held, brings. */
export interface LevelOutcome {
  /** Chance that the level is reached. */
  readonly chance: number;
  /** Mean volume over the level, bottles that miss it counted as none. */
  readonly overflow: number;
  /** Mean volume short of the level, bottles that reach it counted as none. */
  readonly shortfall: number;
}

/**
 * Chance, overflow and shortfall of fills whose mean lies over what the bottles hold.
 *
 * Method   E[D+] = mu Phi(z) + sigma phi(z), E[D-] = sigma phi(z) - mu Phi(-z), z = mu/sigma
 * Symbols  over    mu     mean delivered less mean capacity   m3
 *          spread  sigma  of delivered less held              m3, > 0
 * Returns  chance and volumes
 * Assumes  normal fills and bottles, independent of each other
 * Cost     O(1)
 * Source   derived
 */
export const levelOutcome = (over: number, spread: number): LevelOutcome => {
  const z = over / spread;
  // beyond some 38 deviations both tails are none, and differences of rounding must not become a volume
  const density = normalDensity(z);
  return {
    chance: normalCdf(z),
    overflow: Math.max(0, over * normalCdf(z) + spread * density),
    shortfall: Math.max(0, spread * density - over * normalCdf(-z)),
  };
};

/** The smallest whole count at which a line reaches a volume; a count is rounded up, never to the nearest. */
export const countReaching = (volume: number, afterRun: number, perCount: number): number =>
  Math.ceil((volume - afterRun) / perCount);
