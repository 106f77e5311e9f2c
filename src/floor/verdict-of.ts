import type { Verdict } from './finding.ts';

/** A gap this small against its demand is rounding, not a shortage. */
const rounding = 1e-9;

/** A finding carries or is short only if its whole interval lies on one side. */
export const verdictOf = (
  gap: number | undefined,
  interval: { low: number; high: number } | undefined,
  scale: number,
): Verdict => {
  if (gap === undefined) return 'unknown';
  const low = interval?.low ?? gap;
  const high = interval?.high ?? gap;
  if (low >= -rounding * scale) return 'carries';
  return high < 0 ? 'short' : 'unknown';
};
