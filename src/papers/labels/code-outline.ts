import { encode } from 'uqr';

/**
 * The square code of a text in modules, true where it is dark; the quiet zone is left to whoever places it.
 *
 * Method   the checkerboard mask for all: the search for the best of eight takes ten times as long as all the rest, and
 *          a reader takes any; a quarter of the modules may be lost (level Q)
 */
export const codeModules = (text: string): readonly (readonly boolean[])[] =>
  encode(text, { ecc: 'Q', border: 0, maskPattern: 0 }).data;

/**
 * The dark parts of a square code as a path of SVG, one module to the unit. Half as long as a rectangle for each run of
 * a row, and without a seam between the rows wherever it is drawn.
 *
 * Method   each edge between dark and light is walked once, the dark to the right; where two dark modules touch at a
 *          corner alone the walk turns right and keeps to its own
 * Cost     O(modules); thousands are drawn at once, so that the inner loop makes nothing anew
 */
export const outlineOf = (modules: readonly (readonly boolean[])[]): string => {
  // light all around, so that no edge is looked for outside
  const wide = modules.length + 2;
  const dark = new Uint8Array(wide * wide);
  for (const [y, row] of modules.entries())
    for (const [x, is] of row.entries()) if (is) dark[(y + 1) * wide + x + 1] = 1;
  // a step to the right, down, left, up, each a turn to the right from the last; a corner is named by the module below
  // and to the right of it
  const steps = [1, wide, -1, -wide] as const;
  /** Ahead of each step to the left; the next is ahead of it to the right. */
  const around = [-wide, 0, -1, -wide - 1, -wide] as const;
  /** Modules whose upper edge was walked. */
  const walked = new Uint8Array(wide * wide);
  const walk = (start: number): string => {
    let path = `M${(start % wide) - 1} ${Math.floor(start / wide) - 1}`;
    let [at, way, length, edge] = [start, 0, 0, ''];
    do {
      if (way === 0) walked[at] = 1;
      at += steps[way]!;
      length += way < 2 ? 1 : -1;
      const turn = dark[at + around[way + 1]!] === 0 ? 1 : dark[at + around[way]!] === 1 ? 3 : 0;
      if (turn === 0) continue;
      path += edge;
      edge = (way % 2 === 0 ? 'h' : 'v') + length;
      way = (way + turn) % 4;
      length = 0;
    } while (way !== 0 || at !== start);
    // the last edge is drawn by closing
    return `${path}z`;
  };
  let path = '';
  for (let at = wide; at < dark.length; at += 1)
    if (dark[at] === 1 && dark[at - wide] === 0 && walked[at] === 0) path += walk(at);
  return path;
};
