/** One line of the table of capacity tolerances: for a capacity up to `most`, mL. */
type CapacityRow =
  | { readonly most: number; readonly fixed: number }
  | { readonly most: number; readonly share: number };

/** OIML R 138:2007, 5.1.2: the same for nominal and for brimful capacity. */
const least = 50;
const rows: readonly CapacityRow[] = [
  { most: 100, fixed: 3 },
  { most: 200, share: 0.03 },
  { most: 300, fixed: 6 },
  { most: 500, share: 0.02 },
  { most: 1_000, fixed: 10 },
  { most: 5_000, share: 0.01 },
];

/** Annex A: a batch is judged by this many bottles. */
export const measuringContainerSample = 35;
/** By which the standard deviation is multiplied beside the mean, and its own limit as a share of the whole tolerance. */
export const measuringContainerFactors = { spread: 1.57, spreadShare: 0.266 } as const;

const hair = 1e-9;
const millilitre = 1e-6;

/**
 * Tolerance of the capacity of a bottle that is a measuring container, to either side.
 *
 * Method   table by the capacity
 * Symbols  capacity  scalar  m3, stated
 * Returns  m3; undefined outside 50 mL to 5 L
 * Cost     O(1)
 * Source   OIML R 138:2007, 5.1.2
 */
export const measuringContainerTolerance = (capacity: number): number | undefined => {
  const stated = capacity / millilitre;
  if (stated < least * (1 - hair)) return undefined;
  const row = rows.find(({ most }) => stated <= most * (1 + hair));
  if (row === undefined) return undefined;
  return ('fixed' in row ? row.fixed : row.share * stated) * millilitre;
};
