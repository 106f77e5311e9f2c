import type { SheetCase } from '../sheet-case.ts';
import { script } from './sources.ts';

const route = {
  dewPointPressure: 7e5,
  pressures: [7e5, 6.5e5, 6e5],
  temperatures: [291.15, 271.15, 285.15],
  flow: 1 / 60,
};

export const coldestPointCases: readonly SheetCase[] = [
  {
    name: '+3 degC at 7 bar(g) over walls of 18, -2 and 12 degC, by the equation of Sonntag',
    source: {
      title: 'independent script with the saturation equation of Sonntag, 1990',
      place: 'coefficients from public code files',
      mark: 'computed',
    },
    inputs: { ...route, dewPoint: 276.15 },
    outputs: {
      dewPoints: [276.15, 275.2446, 274.2841],
      margins: [15, -4.0946, 10.8659],
      smallestMargin: -4.0946,
      point: 2,
      condensate: 0.0913,
    },
    tolerance: { absolute: 0.004, relative: 3e-3, reason: 'the two equations agree within 0.04 %, 0.005 K' },
    notes: ['ROUTE_CONDENSES', 'ROUTE_FREEZES'],
  },
  ...(
    [
      [3, 0.7, 6e-3],
      [-20, 0.095, 6e-3],
      [-40, 0.012, 2e-2],
    ] as const
  ).map(([celsius, grams, relative]) => ({
    name: `at ${celsius} degC and 7 bar(g) about ${grams} g of water are left in a cubic metre of 20 degC, 1 bar`,
    source: script,
    inputs: { ...route, dewPoint: celsius + 273.15 },
    outputs: { waterCarried: grams / 1000 },
    tolerance: { relative, reason: 'two printed digits' },
  })),
];
