import type { Finding } from '../finding.ts';
import type { Refusal } from '../utilities/utility-finding.ts';

/** Why a finding waits for a place of the book. */
export type Waits =
  /** Nothing stands there. */
  | 'missing'
  /** A sheet does not take what stands there. */
  | 'refused'
  /** What stands there is not sure enough to tell. */
  | 'unsure';

export interface PlaceBehind {
  readonly path: string;
  readonly waits: Waits;
  /** How much of the finding its answer would settle, 0 to 1. */
  readonly part: number;
}

/**
 * The places whose answers would decide a finding that is not decided.
 *
 * Method   places that are missing, or whose value a sheet refused, count the same: each is one of n. Where nothing is
 *          missing the interval lies on both sides, and each place counts as the share of the width that goes with it
 * Returns  each place once, what is missing first; empty for a finding that carries or is short
 */
export const placesBehind = (
  finding: Finding & { readonly refusals?: readonly Refusal[] },
): readonly PlaceBehind[] => {
  if (finding.verdict !== 'unknown') return [];
  const waits = new Map<string, Waits>();
  for (const path of [...finding.have.missing, ...finding.demand.missing]) waits.set(path, 'missing');
  for (const path of (finding.refusals ?? []).flatMap(({ places }) => places)) {
    if (!waits.has(path)) waits.set(path, 'refused');
  }
  const { causes, decides } = finding;
  if (waits.size === 0 && causes.length > 0) {
    return causes.map(({ path, share }) => ({ path, waits: 'unsure', part: share }));
  }
  if (waits.size === 0 && decides !== undefined) waits.set(decides, 'missing');
  return [...waits].map(([path, why]) => ({ path, waits: why, part: 1 / waits.size }));
};
