import type { PaperWords } from '../paper-words.ts';

/** Smaller shares are told by this one: no trial of some bottles knows a tail beyond it. */
const leastTold = 1e-4;

/** Share of bottles that stay short, of that which reaches the level; empty where that is not known. */
export const shortText = (reached: number | undefined, { say, percent }: PaperWords): string => {
  if (reached === undefined) return '';
  const short = Math.max(0, 1 - reached);
  return short < leastTold ? say('filled.short.under', { percent: percent(leastTold) }) : percent(short);
};
