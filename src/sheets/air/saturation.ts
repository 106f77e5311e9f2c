import { choiceField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { saturationTemperatures } from './bounds.ts';
import { vapourGasConstant } from './dry-air.ts';
import { ashrae } from './sources.ts';

/** Triple point of water, K: ice below, water above. A switch at 0 degC would spoil the inverse near freezing. */
export const triplePoint = 273.16;

/** Ends of the equations, K. */
export const coldest = saturationTemperatures.least;
export const hottest = saturationTemperatures.most;

const logOverWater = (T: number): number =>
  -5.8002206e3 / T +
  1.3914993 -
  4.8640239e-2 * T +
  4.1764768e-5 * T * T -
  1.4452093e-8 * T * T * T +
  6.5459673 * Math.log(T);

const logOverIce = (T: number): number =>
  -5.6745359e3 / T +
  6.3925247 +
  T * (-9.677843e-3 + T * (6.2215701e-7 + T * (2.0747825e-9 - 9.484024e-13 * T))) +
  4.1635019 * Math.log(T);

const slopeOverWater = (T: number): number =>
  5.8002206e3 / (T * T) - 4.8640239e-2 + 2 * 4.1764768e-5 * T - 3 * 1.4452093e-8 * T * T + 6.5459673 / T;

const slopeOverIce = (T: number): number =>
  5.6745359e3 / (T * T) -
  9.677843e-3 +
  T * (2 * 6.2215701e-7 + T * (3 * 2.0747825e-9 - 4 * 9.484024e-13 * T)) +
  4.1635019 / T;

/**
 * Pressure of saturated water vapour over water, also supercooled.
 *
 * Method   ln e = c8/T + c9 + c10 T + c11 T^2 + c12 T^3 + c13 ln T
 * Symbols  T  temperature  scalar  K  fitted 273.15 to 473.15; below it is carried on over supercooled water
 * Returns  pressure, Pa
 * Assumes  vapour alone: the enhancement by air (0.4 % at 1 bar, about 3 % at 7 bar) is left out
 * Cost     O(1)
 * Source   Hyland and Wexler, as ASHRAE Fundamentals 2017, chapter 1, prints it
 */
export const saturationOverWater = (temperature: number): number => Math.exp(logOverWater(temperature));

/**
 * Pressure of saturated water vapour over ice.
 *
 * Method   ln e = c1/T + c2 + c3 T + c4 T^2 + c5 T^3 + c6 T^4 + c7 ln T
 * Symbols  T  temperature  scalar  K  173.15 to 273.16
 * Returns  pressure, Pa
 * Cost     O(1)
 * Source   Hyland and Wexler, as ASHRAE Fundamentals 2017, chapter 1, prints it
 */
export const saturationOverIce = (temperature: number): number => Math.exp(logOverIce(temperature));

/** Over ice below the triple point, over water above it. */
export const saturationPressure = (temperature: number): number =>
  temperature < triplePoint ? saturationOverIce(temperature) : saturationOverWater(temperature);

const tripleOverIce = saturationOverIce(triplePoint);

/** Newton on ln e against 1/T, in which it is nearly a straight line; the fourth step is below rounding. */
const inverse = (
  log: (T: number) => number,
  slope: (T: number) => number,
  vapourPressure: number,
): number => {
  const wanted = Math.log(vapourPressure);
  let T = triplePoint;
  for (let i = 0; i < 8; i++) {
    const step = (log(T) - wanted) / (slope(T) * T * T);
    T = 1 / (1 / T + step);
  }
  return T;
};

/**
 * Temperature at which vapour of a pressure is saturated over water, also supercooled.
 *
 * Symbols  e  vapourPressure  scalar  Pa  > 0
 * Returns  temperature, K; NaN outside -100 to 200 degC
 * Cost     O(1), 8 logarithms
 * Source   inverse of `saturationOverWater`
 */
export const dewPointOverWater = (vapourPressure: number): number => {
  const T = inverse(logOverWater, slopeOverWater, vapourPressure);
  return T >= coldest && T <= hottest ? T : Number.NaN;
};

/**
 * Frost point where the air is that dry, dew point where it is not.
 *
 * Symbols  e  vapourPressure  scalar  Pa  > 0
 * Returns  temperature, K; NaN outside -100 to 200 degC
 * Cost     O(1), 8 logarithms
 * Source   inverse of `saturationPressure`
 */
export const frostOrDewPoint = (vapourPressure: number): number => {
  if (vapourPressure >= tripleOverIce) return Math.max(triplePoint, dewPointOverWater(vapourPressure));
  const T = inverse(logOverIce, slopeOverIce, vapourPressure);
  return T >= coldest ? T : Number.NaN;
};

export type Surface = 'ice below freezing' | 'water';

interface SaturationInputs {
  readonly temperature: number;
  readonly surface: Surface;
}

export const saturationSheet = defineSheet({
  id: 'air/saturation',
  version: 1,
  inputs: {
    temperature: numberField('temperature', 'T', saturationTemperatures),
    surface: choiceField<Surface>('\\text{surface}', ['ice below freezing', 'water'], 'ice below freezing'),
  },
  outputs: {
    pressure: numberField('absolutePressure', 'e_s'),
    vapourDensity: numberField('massConcentration', '\\rho_v'),
  },
  formula: [
    '\\ln e_s = \\frac{c_8}{T} + c_9 + c_{10} T + c_{11} T^2 + c_{12} T^3 + c_{13} \\ln T \\quad \\text{(water)}',
    '\\ln e_s = \\frac{c_1}{T} + c_2 + c_3 T + c_4 T^2 + c_5 T^3 + c_6 T^4 + c_7 \\ln T \\quad \\text{(ice)}',
    '\\rho_v = \\frac{e_s}{R_v T}',
  ],
  limits: [
    {
      code: 'SATURATION_SUPERCOOLED',
      broken: ({ surface, temperature }) => surface === 'water' && temperature < triplePoint,
    },
  ],
  sources: [ashrae],
  compute: ({ temperature, surface }: SaturationInputs) => {
    const pressure = surface === 'water' ? saturationOverWater(temperature) : saturationPressure(temperature);
    return { pressure, vapourDensity: pressure / (vapourGasConstant * temperature) };
  },
});
