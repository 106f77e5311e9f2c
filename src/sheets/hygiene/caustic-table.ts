/**
 * Caustic, time and temperature of equal bactericidal value in soaker washers, per cent NaOH: recalled from the US
 * milk ordinance, memory. Consistent in itself; the printed table was not seen.
 */
export const causticMinutes = [3, 5, 7] as const;
/** degF, rising. */
export const causticFahrenheit = [120, 130, 140, 150, 160, 170] as const;
export const causticPercent: readonly (readonly number[])[] = [
  [4.27, 2.86, 1.91, 1.28, 0.86, 0.57],
  [3.22, 2.16, 1.43, 0.96, 0.64, 0.43],
  [2.66, 1.78, 1.19, 0.8, 0.53, 0.36],
];
