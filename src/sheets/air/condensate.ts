import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import {
  actualFlows,
  humiditiesFromDry,
  saturationTemperatures,
  standardAtmospheres,
  supplyPressures,
  times,
} from './bounds.ts';
import { dryDensity } from './dry-air.ts';
import { humidityRatio } from './humid-air.ts';
import { saturationPressure } from './saturation.ts';
import { ashrae, derived } from './sources.ts';

/**
 * Water that falls out where moist air is cooled or compressed, in a time.
 *
 * Method   m = m_dry max(0, w_1 - w_2),  w = eps e/(p - e)
 * Symbols  m_dry  dryMass   scalar  kg     of dry air that passes
 *          w_1    before    scalar  kg/kg  humidity ratio
 *          w_2    saturated scalar  kg/kg  most that the air holds afterwards
 * Returns  mass, kg
 * Cost     O(1)
 * Source   mass balance of the water
 */
export const condensed = (dryMass: number, before: number, saturated: number): number =>
  dryMass * Math.max(0, before - saturated);

/** Most vapour that air of a pressure and temperature holds, kg/kg. */
export const saturatedRatio = (temperature: number, pressure: number): number =>
  humidityRatio(saturationPressure(temperature), pressure);

interface CondensateInputs {
  readonly intakeFlow: number;
  readonly temperature: number;
  readonly relativeHumidity: number;
  readonly atmosphere: number;
  readonly pressure: number;
  readonly aftercooler: number;
  readonly dryerDewPoint: number;
  readonly time: number;
}

export const condensateSheet = defineSheet({
  id: 'air/condensate',
  version: 1,
  inputs: {
    intakeFlow: numberField('actualAirFlow', 'q_1', actualFlows),
    temperature: numberField('temperature', 'T_1', { least: 203.15, most: 343.15 }),
    relativeHumidity: numberField('relativeHumidity', '\\varphi', humiditiesFromDry),
    atmosphere: numberField('absolutePressure', 'p_a', standardAtmospheres),
    pressure: numberField('gaugePressure', 'p_2', supplyPressures),
    aftercooler: numberField('temperature', 'T_2', saturationTemperatures),
    dryerDewPoint: numberField('temperature', 'T_d', saturationTemperatures),
    // a shift of eight hours
    time: numberField('time', 't', { ...times, assumed: 28_800 }),
  },
  outputs: {
    dryMassFlow: numberField('massFlow', '\\dot m'),
    waterIn: numberField('mass', 'm_1'),
    condensedInAftercooler: numberField('mass', 'm_{1-2}'),
    leftAfterAftercooler: numberField('mass', 'm_2'),
    condensedInDryer: numberField('mass', 'm_{2-3}'),
    leftAfterDryer: numberField('mass', 'm_3'),
  },
  formula: [
    '\\dot m = \\frac{p_a - \\varphi e_s(T_1)}{R T_1} q_1, \\quad w_1 = \\frac{\\varepsilon \\varphi e_s(T_1)}{p_a - \\varphi e_s(T_1)}',
    'w_s(T) = \\frac{\\varepsilon\\, e_s(T)}{p_2 + p_a - e_s(T)}, \\quad w_2 = \\min(w_1, w_s(T_2)), \\quad w_3 = \\min(w_2, w_s(T_d))',
    'm_{1-2} = \\dot m\\, t\\, (w_1 - w_2), \\quad m_{2-3} = \\dot m\\, t\\, (w_2 - w_3)',
  ],
  limits: [
    { code: 'CONDENSATE_DRAINS', broken: (_, { condensedInAftercooler }) => condensedInAftercooler > 0 },
    { code: 'CAUTION_COMPRESSED_AIR', broken: () => true },
    { code: 'VAPOUR_IDEAL', broken: ({ pressure, atmosphere }) => pressure + atmosphere > 3e5 },
  ],
  sources: [ashrae, derived],
  check: (i) => {
    const intake = i.relativeHumidity * saturationPressure(i.temperature);
    const line = i.pressure + i.atmosphere;
    return [
      ...(intake >= i.atmosphere
        ? [{ code: 'VAPOUR_OVER_TOTAL', path: 'atmosphere', given: i.atmosphere, allowed: `> ${intake}` }]
        : []),
      ...(['aftercooler', 'dryerDewPoint'] as const)
        .filter((path) => saturationPressure(i[path]) >= line)
        .map((path) => ({ code: 'VAPOUR_OVER_TOTAL', path, given: i[path] })),
    ];
  },
  compute: (i: CondensateInputs) => {
    const vapour = i.relativeHumidity * saturationPressure(i.temperature);
    const line = i.pressure + i.atmosphere;
    const dryMassFlow = dryDensity(i.atmosphere, vapour, i.temperature) * i.intakeFlow;
    const dryMass = dryMassFlow * i.time;
    const intake = humidityRatio(vapour, i.atmosphere);
    const cooled = saturatedRatio(i.aftercooler, line);
    const dried = saturatedRatio(i.dryerDewPoint, line);
    const condensedInAftercooler = condensed(dryMass, intake, cooled);
    const condensedInDryer = condensed(dryMass, Math.min(intake, cooled), dried);
    const leftAfterAftercooler = dryMass * Math.min(intake, cooled);
    return {
      dryMassFlow,
      waterIn: dryMass * intake,
      condensedInAftercooler,
      leftAfterAftercooler,
      condensedInDryer,
      leftAfterDryer: dryMass * Math.min(intake, cooled, dried),
    };
  },
});
