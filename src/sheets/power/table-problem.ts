import type { Problem } from '../../quantity/problem.ts';

/** A value between or beside the rows of a table. */
export const offTable = (path: string, given: unknown, rows: readonly (string | number)[]): Problem => ({
  code: 'POWER_OFF_TABLE',
  path,
  given,
  allowed: rows.map(String),
});

/** A value beyond the last row of a table. */
export const beyondTable = (path: string, given: unknown, limit: string): Problem => ({
  code: 'POWER_BEYOND_TABLE',
  path,
  given,
  allowed: limit,
});
