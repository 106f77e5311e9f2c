import type { Words } from '../words/words.ts';
import type { Counts } from './grouped.ts';

const order = ['short', 'unknown', 'carries'] as const;

/** "1 short, 4 not known, 21 carry": what wants looking at first. */
export const countsText = (words: Words, counts: Counts): string =>
  order
    .filter((verdict) => counts[verdict] > 0)
    .map((verdict) => words.say(`utilities.count.${verdict}`, { n: counts[verdict] }))
    .join(', ');
