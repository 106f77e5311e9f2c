/** The letters of a column counted from 0. */
export const columnName = (column: number): string => {
  let name = '';
  for (let rest = column + 1; rest > 0; rest = Math.floor((rest - 1) / 26)) {
    name = String.fromCharCode(65 + ((rest - 1) % 26)) + name;
  }
  return name;
};

/** `B7` of the row and column counted from 0. */
export const placeName = (row: number, column: number): string => `${columnName(column)}${row + 1}`;
