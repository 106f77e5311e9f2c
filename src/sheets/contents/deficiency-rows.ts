/** One line of a table of tolerable deficiencies: for a label up to `most`, a fixed deficiency or a share of the label. */
export type DeficiencyRow =
  | { readonly most: number; readonly fixed: number }
  | { readonly most: number; readonly share: number };

/** How the last digit of a share is rounded: always up, to this step. */
export interface DeficiencyRounding {
  /** Labels up to here, mL. */
  readonly most: number;
  /** mL. */
  readonly step: number;
}

/** What the tables of one rule say of single packages. All in mL, as they print. */
export interface DeficiencyTable {
  /** Smallest label that the rule speaks of. */
  readonly least: number;
  readonly rows: readonly DeficiencyRow[];
  readonly rounding: readonly DeficiencyRounding[];
}

// 0.03 of 330 is 9.9 and not a hair more: a double must not round up to 10.0
const hair = 1e-9;

/**
 * Tolerable deficiency of one package under a table.
 *
 * Method   the row of the label; a share is rounded up to the step of the table
 * Symbols  quantity  scalar  mL, on the label
 * Returns  mL; undefined where the table does not reach
 * Cost     O(1)
 * Source   the table
 */
export const deficiencyIn = ({ least, rows, rounding }: DeficiencyTable, quantity: number) => {
  // a label in fluid ounces or read in cubic metres is a hair beside its whole millilitre
  const label = Math.round(quantity / hair) * hair;
  if (label < least - hair) return undefined;
  const row = rows.find(({ most }) => label <= most + hair);
  if (row === undefined) return undefined;
  if ('fixed' in row) return row.fixed;
  const step = rounding.find(({ most }) => label <= most + hair)?.step;
  if (step === undefined) return row.share * label;
  const steps = Math.ceil((row.share * label) / step - hair);
  // divided, not multiplied: 99/10 is 9.9, 99 x 0.1 is not
  return steps / Math.round(1 / step);
};
