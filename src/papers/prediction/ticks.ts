export interface Tick {
  /** Share of the axis. */
  readonly at: number;
  readonly text: string;
}

/** Round numbers from nothing to `most`, four to eight of them: steps of 1, 2 or 5 times a power of ten. */
export const ticksOf = (most: number, text: (value: number) => string): readonly Tick[] => {
  if (!(most > 0) || !Number.isFinite(most)) return [];
  const power = 10 ** Math.floor(Math.log10(most / 4));
  const step = [1, 2, 5, 10].map((times) => times * power).findLast((one) => most / one >= 4) ?? power;
  const count = Math.floor(most / step + 1e-9);
  return Array.from({ length: count + 1 }, (_, i) => {
    const value = Number((i * step).toPrecision(12));
    return { at: value / most, text: text(value) };
  });
};
