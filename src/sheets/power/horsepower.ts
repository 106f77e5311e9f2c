/** Mechanical horsepower, 550 ft lbf/s, in W: exact by the definitions of foot and pound-force. */
export const horsepower = 745.6998715822702;

/** Trade papers take 745.7 or 746 W; both are the same plate. */
const plateTolerance = 1e-3;

/**
 * The table row of a plate rating, where it is one of them: horsepower is told from the number of watts.
 *
 * Symbols  power  scalar  W;  rows  [n]  hp
 * Returns  place of the row, or -1: a rating between two rows is no row
 * Cost     O(n)
 */
export const horsepowerRow = (power: number, rows: readonly number[]): number =>
  rows.findIndex((hp) => Math.abs(power / (hp * horsepower) - 1) <= plateTolerance);
