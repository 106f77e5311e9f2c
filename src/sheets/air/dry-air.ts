/** Gas constant of dry air, J/(kg K): universal constant over 28.964 g/mol (ISO 2533 has 287.05287, memory). */
export const gasConstant = 287.055;

/** Mass of a mole of water over that of a mole of dry air: 287.055 over 461.52 J/(kg K). */
export const vapourGasConstant = 461.52;
export const massRatio = gasConstant / vapourGasConstant;

/** State in which normal air is kept: ANR of ISO 8778, counted as 100 kPa, 20 degC. */
export const normalPressure = 100_000;
export const normalTemperature = 293.15;

/** Dry air in a cubic metre of normal air, kg/m3: as kept, humidity left out. */
export const normalDensity = normalPressure / (gasConstant * normalTemperature);

/** Density printed with ISO 6358 for its reference (65 % relative humidity), kg/m3; from memory. */
export const referenceDensity = 1.185;

/**
 * Mass of dry air in a cubic metre of moist air.
 *
 * Method   rho = (p - e)/(R T)
 * Symbols  p  pressure        scalar  Pa absolute
 *          e  vapourPressure  scalar  Pa
 *          T  temperature     scalar  K
 * Returns  kg/m3
 * Cost     O(1)
 * Source   ideal gas law, Dalton
 */
export const dryDensity = (pressure: number, vapourPressure: number, temperature: number): number =>
  (pressure - vapourPressure) / (gasConstant * temperature);
