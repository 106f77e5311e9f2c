/** Numbers by chance that are the same every time. */
export interface Random {
  readonly uniform: (low: number, high: number) => number;
  readonly normal: () => number;
  readonly whole: (low: number, high: number) => number;
}

/** Mulberry32, public domain; normal deviates by Box and Muller: nothing of the program's own distributions. */
export const randomFrom = (seed: number): Random => {
  let state = seed >>> 0;
  const next = (): number => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
  const uniform = (low: number, high: number): number => low + (high - low) * next();
  return {
    uniform,
    normal: () => Math.sqrt(-2 * Math.log(1 - next())) * Math.cos(2 * Math.PI * next()),
    whole: (low, high) => Math.floor(uniform(low, high + 1)),
  };
};
