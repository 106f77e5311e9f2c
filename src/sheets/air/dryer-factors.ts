/** One row of correction factors: capacity at a state over capacity at the rating point. */
export interface FactorRow {
  /** bar(g) or degC. */
  readonly at: readonly number[];
  readonly factor: readonly number[];
  /** The table prints `up to` before its first column. */
  readonly below?: true;
}

export interface DryerFactors {
  readonly pressure: FactorRow;
  readonly ambient: FactorRow;
  readonly inlet: FactorRow;
  readonly dewPoint: FactorRow;
}

export type DryerTable = 'A' | 'B';

/**
 * Correction factors of refrigerated dryers from two manuals, read: A rated 38 degC inlet, 38 degC ambient,
 * 7 bar(g), +3 degC (section 4.5, p. 11); B rated 35 degC inlet, 25 degC ambient, 7 bar(g), +3 degC (section 2.5, p. 10).
 */
export const dryerFactors: Readonly<Record<DryerTable, DryerFactors>> = {
  A: {
    pressure: {
      at: [4, 5.5, 7, 8, 10, 11, 12, 14],
      factor: [0.79, 0.91, 1, 1.07, 1.13, 1.18, 1.23, 1.27],
    },
    ambient: {
      at: [27, 32, 35, 38, 40, 43, 45, 50],
      factor: [1.11, 1.09, 1.06, 1, 0.94, 0.87, 0.78, 0.69],
    },
    inlet: { at: [32, 38, 43, 50, 55, 60, 65, 70], factor: [1.16, 1, 0.82, 0.68, 0.61, 0.52, 0.45, 0.4] },
    dewPoint: { at: [3, 5, 7, 10], factor: [1, 1.08, 1.2, 1.36] },
  },
  B: {
    pressure: { at: [4, 5, 7, 8, 10, 12, 14], factor: [0.77, 0.85, 1, 1.06, 1.15, 1.21, 1.25] },
    ambient: { at: [25, 30, 35, 40, 45], factor: [1, 0.98, 0.95, 0.9, 0.8], below: true },
    inlet: { at: [30, 35, 40, 45, 50, 55], factor: [1.2, 1, 0.85, 0.75, 0.61, 0.49], below: true },
    dewPoint: { at: [3, 5, 7, 10], factor: [1, 1.09, 1.18, 1.38] },
  },
};

// a conversion of units must not push a printed column off the table
const rounding = 1e-3;

/**
 * A factor between the columns of a row, straight; nothing outside them.
 *
 * Returns  factor; NaN off the table, which is refused and never extrapolated
 * Cost     O(columns)
 */
export const factorAt = ({ at, factor, below }: FactorRow, value: number): number => {
  const first = at[0]!;
  const last = at[at.length - 1]!;
  if (value > last + rounding || (value < first - rounding && below !== true)) return Number.NaN;
  const inside = Math.min(last, Math.max(first, value));
  const right = Math.max(
    1,
    at.findIndex((column) => column >= inside),
  );
  const [x0, x1, y0, y1] = [at[right - 1]!, at[right]!, factor[right - 1]!, factor[right]!];
  return y0 + ((y1 - y0) * (inside - x0)) / (x1 - x0);
};
