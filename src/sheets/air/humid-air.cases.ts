import type { SheetCase } from '../sheet-case.ts';
import { psychrometricLibrary } from './sources.ts';

export const humidAirCases: readonly SheetCase[] = [
  {
    name: 'dew point of air of 25 degC and 80 % is 21.3094 degC',
    source: psychrometricLibrary,
    inputs: { temperature: 298.15, relativeHumidity: 0.8 },
    outputs: { dewPoint: 294.4594, vapourPressure: 0.8 * 3169.2165 },
    tolerance: { absolute: 2e-3, relative: 1e-6, reason: 'printed digits; its inverse stops at 0.001 K' },
  },
  {
    name: 'humidity ratio and vapour of air of 25 degC and 80 % at the sea, by hand',
    source: {
      title: 'hand calculation',
      place: '0.62198 x 2535.37/(101325 - 2535.37) and 2535.37/(461.52 x 298.15)',
      mark: 'computed',
    },
    inputs: { temperature: 298.15, relativeHumidity: 0.8 },
    outputs: { humidityRatio: 0.015963, vapourDensity: 0.018425 },
    tolerance: { relative: 2e-4, reason: 'five digits; 0.62198 against 0.62194 to 0.622' },
  },
];
