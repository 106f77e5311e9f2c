import { encode } from 'uqr';

/**
 * The square code of a text in modules, true where it is dark; the quiet zone is left to whoever places it.
 *
 * Method   the checkerboard mask for all: the search for the best of eight takes ten times as long as all the rest, and
 *          a reader takes any; a quarter of the modules may be lost (level Q)
 */
export const codeModules = (text: string): readonly (readonly boolean[])[] =>
  encode(text, { ecc: 'Q', border: 0, maskPattern: 0 }).data;

const rounded = (value: number): string => String(Math.round(value * 1000) / 1000);

/**
 * A square code as a path of SVG: each run of dark modules of a row as one rectangle.
 *
 * Symbols  x, y, size  corner and side of the code on the page, mm
 */
export const codePath = (
  modules: readonly (readonly boolean[])[],
  x: number,
  y: number,
  size: number,
): string => {
  const side = size / modules.length;
  const high = rounded(side);
  const runs: string[] = [];
  for (const [row, dark] of modules.entries()) {
    for (let from = 0; from < dark.length; from += 1) {
      if (dark[from] !== true) continue;
      let to = from;
      while (dark[to] === true) to += 1;
      const wide = rounded((to - from) * side);
      runs.push(`M${rounded(x + from * side)} ${rounded(y + row * side)}h${wide}v${high}h-${wide}z`);
      from = to;
    }
  }
  return runs.join('');
};
