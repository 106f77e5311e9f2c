import { listField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { listLengths } from '../list-lengths.ts';
import { absoluteProblems } from './absolute-problems.ts';
import { gaugePressures, normalFlows, standardAtmospheres, supplyPressures, times } from './bounds.ts';
import { condensed, saturatedRatio } from './condensate.ts';
import { normalDensity } from './dry-air.ts';
import { humidityRatio, leastVapour } from './humid-air.ts';
import { vapourAtPressure } from './pressure-dew-point.ts';
import { frostOrDewPoint, saturationPressure, triplePoint } from './saturation.ts';
import { ashrae, derived } from './sources.ts';

interface ColdestPointInputs {
  readonly dewPoint: number;
  readonly dewPointPressure: number;
  readonly atmosphere: number;
  readonly pressures: readonly number[];
  readonly temperatures: readonly number[];
  readonly flow: number;
  readonly time: number;
  readonly margin: number;
}

/** Vapour pressure at every point, nothing condensed on the way. */
const vapours = (i: ColdestPointInputs): number[] => {
  const e = saturationPressure(i.dewPoint);
  return i.pressures.map((p) => vapourAtPressure(e, i.dewPointPressure + i.atmosphere, p + i.atmosphere));
};

/**
 * How far every point of a pipe route is warmer than the dew point of the air in it.
 *
 * Method   e_i = e_s(T_d) p_i/p_d;  T_d,i = e_s^-1(e_i);  margin_i = T_i - T_d,i
 * Symbols  T_d  dewPoint          scalar  K   at p_d
 *          p_d  dewPointPressure  scalar  Pa absolute
 *          p    pressures         [n]     Pa absolute
 *          T    temperatures      [n]     K   of the wall
 * Returns  margins, K; water falls out where one is negative
 * Assumes  the air itself was dried to T_d; what condensed before is still counted further on
 * Cost     O(n)
 * Source   `vapourAtPressure`, `frostOrDewPoint`
 */
export const routeMargins = (
  dewPoint: number,
  dewPointPressure: number,
  pressures: readonly number[],
  temperatures: readonly number[],
): number[] => {
  const e = saturationPressure(dewPoint);
  return pressures.map(
    (p, i) => temperatures[i]! - frostOrDewPoint(vapourAtPressure(e, dewPointPressure, p)),
  );
};

const placeOfLeast = (values: readonly number[]): number =>
  values.reduce((best, value, i) => (value < values[best]! ? i : best), 0);

export const coldestPointSheet = defineSheet({
  id: 'air/coldest-point',
  version: 1,
  inputs: {
    dewPoint: numberField('temperature', 'T_d', { least: 173.15, most: 343.15 }),
    dewPointPressure: numberField('gaugePressure', 'p_d', supplyPressures),
    atmosphere: numberField('absolutePressure', 'p_a', standardAtmospheres),
    pressures: listField('gaugePressure', 'p_i', gaugePressures),
    temperatures: listField('temperature', 'T_i', { least: 203.15, most: 343.15 }),
    flow: numberField('normalAirFlow', 'q', normalFlows),
    time: numberField('time', 't', { ...times, assumed: 28_800 }),
    // 5 to 10 K is habit, memory
    margin: numberField('temperatureDifference', '\\Delta T_m', { least: 0, most: 100, assumed: 5 }),
  },
  outputs: {
    dewPoints: listField('temperature', 'T_{d,i}'),
    margins: listField('temperatureDifference', '\\Delta T_i'),
    smallestMargin: numberField('temperatureDifference', '\\Delta T_{\\min}'),
    point: numberField('count', 'i'),
    waterCarried: numberField('massConcentration', 'c'),
    condensate: numberField('mass', 'm'),
  },
  formula: [
    'e_i = e_s(T_d) \\frac{p_i + p_a}{p_d + p_a}, \\quad T_{d,i} = e_s^{-1}(e_i), \\quad \\Delta T_i = T_i - T_{d,i}',
    'c = \\rho_n\\, w(T_d), \\quad m = \\max_i\\ \\rho_n\\, q\\, t\\, \\left( w(T_d) - w_s(T_i, p_i) \\right)',
  ],
  limits: [
    { code: 'ROUTE_CONDENSES', broken: (_, { smallestMargin }) => smallestMargin < 0 },
    {
      code: 'ROUTE_FREEZES',
      broken: ({ temperatures }, { margins }) =>
        margins.some((margin, i) => margin < 0 && temperatures[i]! < triplePoint),
    },
    {
      code: 'ROUTE_MARGIN_SMALL',
      broken: ({ margin }, { smallestMargin }) => smallestMargin >= 0 && smallestMargin < margin,
      parts: ({ margin }) => ({ margin }),
    },
    { code: 'AIR_REFERENCE', broken: () => true },
    { code: 'CAUTION_COMPRESSED_AIR', broken: () => true },
    {
      code: 'VAPOUR_IDEAL',
      broken: ({ dewPointPressure, atmosphere }) => dewPointPressure + atmosphere > 3e5,
    },
  ],
  sources: [ashrae, derived],
  check: (i) => {
    const problems = [
      ...listLengths({ pressures: i.pressures, temperatures: i.temperatures }),
      ...absoluteProblems({ pressures: i.pressures }, i.atmosphere),
    ];
    if (problems.length > 0) return problems;
    const low = vapours(i).some((e) => e < leastVapour);
    return [
      ...(low || saturationPressure(i.dewPoint) >= i.dewPointPressure + i.atmosphere
        ? [{ code: 'DEW_POINT_RANGE', path: 'dewPoint', given: i.dewPoint }]
        : []),
      ...i.temperatures.flatMap((T, n) =>
        saturationPressure(T) >= i.pressures[n]! + i.atmosphere
          ? [{ code: 'VAPOUR_OVER_TOTAL', path: 'temperatures', given: T }]
          : [],
      ),
    ];
  },
  compute: (i: ColdestPointInputs) => {
    const dewPoints = vapours(i).map(frostOrDewPoint);
    const absolutes = i.pressures.map((p) => p + i.atmosphere);
    const margins = routeMargins(i.dewPoint, i.dewPointPressure + i.atmosphere, absolutes, i.temperatures);
    const worst = placeOfLeast(margins);
    const w = humidityRatio(saturationPressure(i.dewPoint), i.dewPointPressure + i.atmosphere);
    const driest = i.temperatures.reduce(
      (least, T, n) => Math.min(least, saturatedRatio(T, absolutes[n]!)),
      Number.POSITIVE_INFINITY,
    );
    return {
      dewPoints,
      margins,
      smallestMargin: margins[worst]!,
      point: worst + 1,
      waterCarried: normalDensity * w,
      condensate: condensed(normalDensity * i.flow * i.time, w, driest),
    };
  },
});
