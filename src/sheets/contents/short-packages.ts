// a volume that was weighed or converted to exactly the limit is a hair beside it, and not below
const rounding = 1e-9;

export const isBelow = (value: number, limit: number): boolean => value < limit - rounding * Math.abs(limit);

/** How many packages hold less than a limit. */
export const countBelow = (volumes: readonly number[], limit: number): number =>
  volumes.filter((volume) => isBelow(volume, limit)).length;
