import { numberField, weighedField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { airPressures, airTemperatures, humidities } from './weighing-bounds.ts';
import { moistAirShort } from './weighing-sources.ts';

const zeroCelsius = 273.15;

/**
 * Density of moist air, for the buoyancy of a weighing.
 *
 * Method   rho = (0.34848 p - 0.009 h exp(0.061 t))/(273.15 + t)
 * Symbols  p  pressure     scalar  Pa; in the formula hPa
 *          T  temperature  scalar  K;  in the formula t in degC
 *          h  humidity     scalar  0 to 1; in the formula per cent
 * Returns  density, kg/m3
 * Assumes  900 to 1100 hPa, 10 to 30 degC, under 80 % humidity: there within 2e-4 of the full formula
 * Cost     O(1)
 * Source   OIML R 111-1, approximate formula
 */
export const airDensity = (pressure: number, temperature: number, humidity: number): number => {
  const [p, t, h] = [pressure / 100, temperature - zeroCelsius, 100 * humidity];
  return (0.34848 * p - 0.009 * h * Math.exp(0.061 * t)) / temperature;
};

interface AirDensityInputs {
  readonly pressure: number;
  readonly temperature: number;
  readonly humidity: number;
}

export const airDensitySheet = defineSheet({
  id: 'contents/air-density',
  version: 1,
  inputs: {
    pressure: numberField('absolutePressure', 'p', airPressures),
    temperature: numberField('temperature', 'T', airTemperatures),
    humidity: numberField('relativeHumidity', 'h', { ...humidities, assumed: 0.5 }),
  },
  outputs: { density: weighedField('density', '\\rho_a') },
  formula: [
    '\\rho_a = \\frac{0.34848\\, p - 0.009\\, h\\, e^{0.061\\, t}}{273.15 + t}, \\quad p \\text{ in hPa},\\ h \\text{ in \\%},\\ t \\text{ in °C}',
  ],
  limits: [
    {
      code: 'AIR_DENSITY_RANGE',
      broken: ({ pressure, temperature, humidity }) =>
        pressure < 9e4 ||
        pressure > 1.1e5 ||
        temperature < zeroCelsius + 10 ||
        temperature > zeroCelsius + 30 ||
        humidity >= 0.8,
    },
  ],
  sources: [moistAirShort],
  compute: (i: AirDensityInputs) => ({ density: airDensity(i.pressure, i.temperature, i.humidity) }),
});
