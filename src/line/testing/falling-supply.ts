import type { WalkedSupply } from '../walked-rows.ts';

/** Every row takes as much, leaves the tank lower and the next one slower; nothing makes it up. */
export const fallingSupply = (fillTime: (set: number) => number): WalkedSupply => ({
  start: { drawn: 0, vessel: 0, pumping: false },
  rest: (stored) => stored,
  row: (stored) => {
    const seconds = fillTime(stored.drawn);
    return {
      fillTime: seconds,
      drawTime: 0.9 * seconds,
      drawn: 1,
      stored: { ...stored, drawn: stored.drawn + 1 },
    };
  },
});
