/**
 * Classes of ISO 8573-1:2010, from three public reproductions that agree, read. Concentrations refer to 20 degC,
 * 1 bar absolute and no humidity; humidity is measured at the pressure of the line.
 */
export const purityClasses = ['0', '1', '2', '3', '4', '5', '6', '7', '8', '9', 'X'] as const;
export type PurityClass = (typeof purityClasses)[number];

/** Most particles in a cubic metre of 0.1 to 0.5, 0.5 to 1 and 1 to 5 um, classes 1 to 5; null where none is set. */
export const particleLimits: readonly (readonly [number | null, number | null, number])[] = [
  [20_000, 400, 10],
  [400_000, 6_000, 100],
  [null, 90_000, 1_000],
  [null, null, 10_000],
  [null, null, 100_000],
];

/** Most particles by mass, kg/m3, classes 6 and 7; more is X. */
export const particleMassLimits: readonly number[] = [5e-6, 10e-6];

/** Highest pressure dew point, degC, classes 1 to 6. */
export const waterLimits: readonly number[] = [-70, -40, -20, 3, 7, 10];

/** Most liquid water, kg/m3, classes 7 to 9; more is X. */
export const liquidWaterLimits: readonly number[] = [0.5e-3, 5e-3, 10e-3];

/** Most oil in all forms, kg/m3, classes 1 to 4; more is X. */
export const oilLimits: readonly number[] = [0.01e-6, 0.1e-6, 1e-6, 5e-6];

/** A limit is met by the limit itself; units of three decimals leave a rounding. */
export const atMost = (value: number, limit: number): boolean => value <= limit * (1 + 1e-9);

/** Class by the first limit that holds a value, counted from `first`; X where none does. */
export const classByLimit = (value: number, limits: readonly number[], first: number): PurityClass => {
  const place = limits.findIndex((limit) => atMost(value, limit));
  return place < 0 ? 'X' : (`${first + place}` as PurityClass);
};

/** A class that is as clean as another or cleaner. */
export const asCleanAs = (given: PurityClass, asked: PurityClass): boolean =>
  purityClasses.indexOf(given) <= purityClasses.indexOf(asked);
