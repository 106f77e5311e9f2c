import type { SheetCase } from '../sheet-case.ts';

export const intakeDewPointCases: readonly SheetCase[] = (
  [
    [25, 0.6, 101325, 7e5, 0.0118983, 15041.4, 54.025],
    [32, 0.85, 101325, 7e5, 0.0258674, 31995.5, 70.582],
    [15, 0.4, 84556, 6e5, 0.0050596, 5523.71, 34.658],
  ] as const
).map(([celsius, relativeHumidity, atmosphere, pressure, ratio, vapourPressure, dewPoint]) => ({
  name: `air of ${celsius} degC and ${100 * relativeHumidity} % at ${pressure / 1e5} bar(g), by the equation of Sonntag`,
  source: {
    title: 'independent script with the saturation equation of Sonntag, 1990',
    place: 'coefficients from public code files',
    mark: 'computed',
  },
  inputs: { temperature: celsius + 273.15, relativeHumidity, atmosphere, pressure },
  outputs: { humidityRatio: ratio, vapourPressure, lineDewPoint: dewPoint + 273.15 },
  tolerance: { relative: 4e-4, reason: 'the two equations agree within 0.02 to 0.04 %' },
  notes: ['VAPOUR_IDEAL'],
}));
