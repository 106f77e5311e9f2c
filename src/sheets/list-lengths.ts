import type { Problem } from '../quantity/problem.ts';

/** One problem for every list that has not as many members as the first of them. */
export const listLengths = (lists: Readonly<Record<string, readonly number[]>>): Problem[] => {
  const [first, ...others] = Object.entries(lists);
  if (first === undefined) return [];
  return others
    .filter(([, list]) => list.length !== first[1].length)
    .map(([name, list]) => ({
      code: 'SHEET_LIST_LENGTH',
      path: name,
      given: list.length,
      allowed: `${first[1].length}`,
      parts: { like: first[0] },
    }));
};
