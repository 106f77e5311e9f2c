export interface Tick {
  /** Share of the axis. */
  readonly at: number;
  readonly text: string;
}

/** Round numbers from one end to another, four to eight of them: steps of 1, 2 or 5 times a power of ten. */
export const ticksBetween = (
  least: number,
  most: number,
  text: (value: number) => string,
): readonly Tick[] => {
  const span = most - least;
  if (!(span > 0) || !Number.isFinite(span)) return [];
  const power = 10 ** Math.floor(Math.log10(span / 4));
  const step = [1, 2, 5, 10].map((times) => times * power).findLast((one) => span / one >= 4) ?? power;
  const first = Math.ceil(least / step - 1e-9);
  const last = Math.floor(most / step + 1e-9);
  return Array.from({ length: last - first + 1 }, (_, i) => {
    const value = Number(((first + i) * step).toPrecision(12));
    return { at: (value - least) / span, text: text(value) };
  });
};

/** The same from nothing on. */
export const ticksOf = (most: number, text: (value: number) => string): readonly Tick[] =>
  ticksBetween(0, most, text);
