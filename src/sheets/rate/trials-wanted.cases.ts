import type { SheetCase } from '../sheet-case.ts';
import { statisticsScript } from './trial-sources.ts';

/** Share, confidence, and trials for 0, 1, 2 … bad ones. */
const rows = [
  [0.05, 0.95, [59, 93, 124, 153]],
  [0.01, 0.95, [299, 473, 628, 773, 913, 1049]],
  [0.005, 0.95, [598, 947, 1258, 1549]],
  [0.05, 0.9, [45, 77, 105, 132]],
] as const;

export const trialsWantedCases: readonly SheetCase[] = rows.flatMap(([share, confidence, counts]) =>
  counts.map(
    (trials, allowed): SheetCase => ({
      name: `under ${100 * share} % bad at ${100 * confidence} %, ${allowed} bad allowed: ${trials}`,
      source: statisticsScript,
      inputs: { share, allowed, confidence },
      outputs: { trials },
      tolerance: { absolute: 1e-9, reason: 'counts are exact' },
      notes: ['TRIALS_FIXED_BEFORE'],
    }),
  ),
);
