/** Median and 95th percentile of times. */
export const spread = (
  times: readonly number[],
): { readonly median: number; readonly p95: number; readonly runs: number } => {
  const sorted = [...times].sort((a, b) => a - b);
  const at = (share: number) =>
    sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? Number.NaN;
  return { median: at(0.5), p95: at(0.95), runs: sorted.length };
};
