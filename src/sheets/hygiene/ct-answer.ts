/** What follows from a needed CT and what is there. */
export interface CtAnswer {
  readonly needed: number;
  readonly neededTime: number;
  readonly ct: number;
  readonly ratio: number;
  readonly reached: number;
}

/**
 * Logs that a contact reaches by a table, and the time that the wanted logs ask.
 *
 * Method   CT_req = CT_table L/L_table;  t_req = CT_req/C;  logs = L_table C t/CT_table
 * Symbols  CT_table  table      scalar  kg s/m3
 *          L_table   tableLogs  scalar
 *          L         logs       scalar  wanted
 *          C         residual   scalar  kg/m3    at the end of the contact
 *          t         time       scalar  s
 * Returns  needed CT and time, CT there, its ratio to the needed one of the table, logs reached
 * Cost     O(1)
 * Source   40 CFR 141.534
 */
export const ctAnswer = (
  table: number,
  tableLogs: number,
  logs: number,
  residual: number,
  time: number,
): CtAnswer => {
  const needed = (table * logs) / tableLogs;
  const ratio = (residual * time) / table;
  return { needed, neededTime: needed / residual, ct: residual * time, ratio, reached: tableLogs * ratio };
};
