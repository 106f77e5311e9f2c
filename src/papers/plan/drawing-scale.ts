/** Scales that a rule on a drawing board has, and what follows them. */
const scales = [5, 10, 20, 25, 50, 75, 100, 125, 150, 200, 250, 300, 500] as const;

/** Lengths of a scale bar, m. */
const bars = [0.5, 1, 2, 5, 10, 20, 50, 100] as const;
/** A bar of about this length is read off well, mm. */
const goodBar = 40;

/** How a drawing is brought onto paper. */
export interface DrawingScale {
  /** `1:50` is 50. */
  readonly to: number;
  /** mm on the paper for a metre of the thing. */
  readonly perMetre: number;
  /** Length that the scale bar shows, m. */
  readonly bar: number;
}

/**
 * The largest scale at which something fits in a frame.
 *
 * Symbols  size   m
 *          frame  mm
 * Returns  beyond 1:500 the next whole hundred
 */
export const drawingScale = (
  size: { readonly width: number; readonly height: number },
  frame: { readonly width: number; readonly height: number },
): DrawingScale => {
  const least = 1000 * Math.max(size.width / frame.width, size.height / frame.height);
  const to = scales.find((one) => one >= least) ?? Math.ceil(least / 100) * 100;
  const perMetre = 1000 / to;
  const bar = bars.findLast((one) => one * perMetre <= goodBar) ?? bars[0];
  return { to, perMetre, bar };
};
