/** Btu/(h ft2) in W/m2. */
const btu = 3.15459;

/** From the table's 90 degF on in steps of 10 degF. */
export const tableStart = (90 + 459.67) / 1.8;
export const tableStep = 10 / 1.8;
export const tableEnd = (210 + 459.67) / 1.8;

export type Insulation = 'bare' | '25 mm' | '50 mm' | '75 mm';

/** Columns in Btu/(h ft2), still air at 60 degF; the bare wall loses what the surface radiates. */
const columns = {
  evaporation: [80, 160, 240, 360, 480, 660, 860, 1100, 1380, 1740, 2160, 2680, 3240],
  bare: [50, 70, 90, 110, 135, 160, 180, 210, 235, 260, 290, 320, 360],
  '25 mm': [12, 15, 19, 23, 27, 31, 34, 38, 42, 46, 50, 53, 57],
  '50 mm': [5, 8, 10, 12, 14, 16, 18, 21, 23, 25, 27, 29, 31],
  '75 mm': [4, 6, 7, 9, 10, 12, 13, 15, 16, 17, 19, 20, 22],
} as const;

export type TankColumn = keyof typeof columns;

/**
 * Heat that a square metre of an open tank loses by the table, straight between two rows.
 *
 * Symbols  T  bath  scalar  K  305.4 to 372.0
 * Returns  W/m2; NaN off the table, which the sheet refuses
 * Cost     O(1)
 * Source   public table of heat lost by open water tanks
 */
export const tableLoss = (column: TankColumn, bath: number): number => {
  // a row's own temperature may come out a rounding beside it
  const place = (bath - tableStart) / tableStep;
  const row = Math.min(columns[column].length - 2, Math.max(0, Math.floor(place)));
  if (place < -1e-6 || place > columns[column].length - 1 + 1e-6) return Number.NaN;
  const low = columns[column][row]!;
  const high = columns[column][row + 1]!;
  return btu * (low + (place - row) * (high - low));
};
