import { dewPointOverWater, saturationOverWater } from '../air/saturation.ts';
import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { humidities } from './bounds.ts';

/**
 * How far a surface lies over the dew point of the room's air.
 *
 * Method   T_s - T_d,  T_d = e_s^-1(phi e_s(T))
 * Symbols  T    room      scalar  K  0 to 60 degC
 *          phi  humidity  ratio      > 0, at most 1
 *          T_s  surface   scalar  K
 * Returns  K; below 0 it gets wet. NaN where the air is drier than the equations reach
 * Cost     O(1)
 * Source   ASHRAE Fundamentals 2017, chapter 1
 */
export const dewMargin = (room: number, humidity: number, surface: number): number =>
  surface - dewPointOverWater(humidity * saturationOverWater(room));

interface SurfaceCondensationInputs {
  readonly room: number;
  readonly relativeHumidity: number;
  readonly surface: number;
}

export const surfaceCondensationSheet = defineSheet({
  id: 'heat/surface-condensation',
  version: 1,
  inputs: {
    room: numberField('temperature', 'T', { least: 273.16, most: 333.15 }),
    relativeHumidity: numberField('relativeHumidity', '\\varphi', { ...humidities, least: 0.01 }),
    surface: numberField('temperature', 'T_s', { least: 243.15, most: 373.15 }),
  },
  outputs: {
    dewPoint: numberField('temperature', 'T_d'),
    margin: numberField('temperatureDifference', 'm'),
    driest: numberField('relativeHumidity', '\\varphi_s'),
  },
  formula: [
    'T_d = e_s^{-1}(\\varphi\\, e_s(T)), \\quad m = T_s - T_d, \\quad \\varphi_s = \\min\\left(1, \\frac{e_s(T_s)}{e_s(T)}\\right)',
  ],
  limits: [
    { code: 'SURFACE_WET', broken: (_, { margin }) => margin <= 0 },
    { code: 'SURFACE_NEAR', broken: (_, { margin }) => margin > 0 && margin < 2 },
    { code: 'SURFACE_FROST', broken: ({ surface }, { margin }) => surface < 273.15 && margin <= 0 },
  ],
  sources: [{ title: 'ASHRAE Handbook, Fundamentals', edition: '2017', place: 'chapter 1', mark: 'read' }],
  compute: ({ room, relativeHumidity, surface }: SurfaceCondensationInputs) => {
    const margin = dewMargin(room, relativeHumidity, surface);
    return {
      dewPoint: surface - margin,
      margin,
      driest: Math.min(1, saturationOverWater(surface) / saturationOverWater(room)),
    };
  },
});
