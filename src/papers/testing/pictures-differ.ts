import type { PagePicture } from './page-picture.ts';

/** Dots of a tile: as wide as a letter, so that the edge of one counts for little. */
const tile = 6;
/** Grey of a tile, of 255, that is more than the rounding of edges on another machine. */
const seen = 26;

const meanOf = ({ width, height, grey }: PagePicture, x: number, y: number): number => {
  let sum = 0;
  let dots = 0;
  for (let row = y; row < Math.min(height, y + tile); row += 1) {
    for (let at = x; at < Math.min(width, x + tile); at += 1) {
      sum += grey[row * width + at]!;
      dots += 1;
    }
  }
  return sum / dots;
};

export interface Difference {
  /** Share of the page's tiles that are darker or lighter. */
  readonly share: number;
  /** First of them from above: shares of the page from its upper left. */
  readonly at?: readonly [x: number, y: number];
}

/** How far two pictures of a page differ, the softness of edges apart; all of it where one has another size. */
export const difference = (a: PagePicture, b: PagePicture): Difference => {
  if (a.width !== b.width || a.height !== b.height) return { share: 1 };
  let differing = 0;
  let tiles = 0;
  let first: readonly [number, number] | undefined;
  for (let y = 0; y < a.height; y += tile) {
    for (let x = 0; x < a.width; x += tile) {
      tiles += 1;
      if (Math.abs(meanOf(a, x, y) - meanOf(b, x, y)) <= seen) continue;
      differing += 1;
      first ??= [x / a.width, y / a.height];
    }
  }
  return { share: differing / tiles, ...(first === undefined ? {} : { at: first }) };
};
