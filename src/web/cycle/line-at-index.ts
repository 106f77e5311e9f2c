import type { ShiftLine } from '../../line/shift/index.ts';

/** The line with the washer's index at so many seconds: the stroke stays, the dwell takes the rest. */
export const lineAtIndex = (line: ShiftLine, index: number): ShiftLine => {
  if (line.washer === undefined) return line;
  return { ...line, washer: { ...line.washer, dwell: Math.max(0, index - line.washer.stroke) } };
};
