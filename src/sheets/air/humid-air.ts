import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { absolutePressures, humidities, saturationTemperatures, seaLevel } from './bounds.ts';
import { massRatio, vapourGasConstant } from './dry-air.ts';
import { coldest, frostOrDewPoint, saturationPressure } from './saturation.ts';
import { ashrae } from './sources.ts';

/**
 * Water vapour in moist air, by mass of the dry air that carries it.
 *
 * Method   w = eps e/(p - e)
 * Symbols  e    vapourPressure  scalar  Pa
 *          p    pressure        scalar  Pa absolute  > e
 *          eps  0.622, masses of a mole of water and of dry air
 * Returns  humidity ratio, kg/kg
 * Cost     O(1)
 * Source   Dalton, ideal gas; ASHRAE Fundamentals 2017, chapter 1
 */
export const humidityRatio = (vapourPressure: number, pressure: number): number =>
  (massRatio * vapourPressure) / (pressure - vapourPressure);

interface HumidAirInputs {
  readonly temperature: number;
  readonly relativeHumidity: number;
  readonly pressure: number;
}

const vapour = ({ temperature, relativeHumidity }: HumidAirInputs): number =>
  relativeHumidity * saturationPressure(temperature);

/** Least vapour that still has a frost point in the equations. */
export const leastVapour = saturationPressure(coldest);

export const humidAirSheet = defineSheet({
  id: 'air/humid-air',
  version: 1,
  inputs: {
    temperature: numberField('temperature', 'T', saturationTemperatures),
    relativeHumidity: numberField('relativeHumidity', '\\varphi', humidities),
    pressure: numberField('absolutePressure', 'p', { ...absolutePressures, assumed: seaLevel }),
  },
  outputs: {
    vapourPressure: numberField('absolutePressure', 'e'),
    humidityRatio: numberField('humidityRatio', 'w'),
    vapourDensity: numberField('massConcentration', '\\rho_v'),
    dewPoint: numberField('temperature', 'T_d'),
  },
  formula: [
    'e = \\varphi\\, e_s(T), \\quad w = \\frac{\\varepsilon\\, e}{p - e}',
    '\\rho_v = \\frac{e}{R_v T}, \\quad T_d = e_s^{-1}(e)',
  ],
  limits: [{ code: 'VAPOUR_IDEAL', broken: ({ pressure }) => pressure > 3e5 }],
  sources: [ashrae],
  check: (i) => [
    ...(vapour(i) >= i.pressure
      ? [{ code: 'VAPOUR_OVER_TOTAL', path: 'pressure', given: i.pressure, allowed: `> ${vapour(i)}` }]
      : []),
    ...(vapour(i) < leastVapour
      ? [{ code: 'DEW_POINT_RANGE', path: 'relativeHumidity', given: i.relativeHumidity }]
      : []),
  ],
  compute: (i: HumidAirInputs) => {
    const vapourPressure = vapour(i);
    return {
      vapourPressure,
      humidityRatio: humidityRatio(vapourPressure, i.pressure),
      vapourDensity: vapourPressure / (vapourGasConstant * i.temperature),
      dewPoint: frostOrDewPoint(vapourPressure),
    };
  },
});
