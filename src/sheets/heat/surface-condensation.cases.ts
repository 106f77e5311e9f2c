import type { SheetCase } from '../sheet-case.ts';
import { humidAirProgram, iapws95 } from './sources.ts';

export const surfaceCondensationCases: readonly SheetCase[] = [
  {
    name: '22 degC, 70 %: dew point 16.28 degC, so a product pipe of 12 degC is wet over 53 %',
    source: humidAirProgram,
    inputs: { room: 295.15, relativeHumidity: 0.7, surface: 285.15 },
    outputs: { dewPoint: 273.15 + 16.282282878, margin: -4.282282878 },
    tolerance: { absolute: 0.01, reason: 'two formulations of saturation, in kelvin' },
    notes: ['SURFACE_WET'],
  },
  {
    name: '30 degC, 80 %: dew point 26.17 degC, a ceiling of 28 degC stays dry by 1.8 K',
    source: humidAirProgram,
    inputs: { room: 303.15, relativeHumidity: 0.8, surface: 301.15 },
    outputs: { dewPoint: 273.15 + 26.17039977, margin: 1.82960023 },
    tolerance: { absolute: 0.01, reason: 'two formulations of saturation, in kelvin' },
    notes: ['SURFACE_NEAR'],
  },
  {
    name: 'vapour at 12 over that at 22 degC by IAPWS-95: 53.03 %',
    source: iapws95,
    inputs: { room: 295.15, relativeHumidity: 0.5, surface: 285.15 },
    outputs: { driest: 0.53030850569 },
    tolerance: { relative: 1e-3, reason: 'two formulations of saturation' },
  },
];
