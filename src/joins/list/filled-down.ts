import type { Tab } from '../../table/index.ts';
import { limits } from '../../table/limits.ts';

/**
 * The rows of a tab in which a cell that was merged over several rows stands in each of them, as a person sees it.
 *
 * Assumes  merged areas may overlap or lie in a hostile file: what they fill is bounded
 */
export const filledDown = ({ rows, merged = [] }: Tab): readonly (readonly string[])[] => {
  if (merged.length === 0) return rows;
  const filled = rows.map((row) => [...row]);
  let cells = 0;
  for (const { top, bottom, left } of merged) {
    const text = filled[top]?.[left] ?? '';
    if (text === '') continue;
    for (let row = top + 1; row <= Math.min(bottom, filled.length - 1); row += 1) {
      cells += 1;
      if (cells > limits.cells) return filled;
      const into = filled[row]!;
      // a row without any other cell is no row of the list
      if (into.length === 0) continue;
      while (into.length <= left) into.push('');
      into[left] = text;
    }
  }
  return filled;
};
