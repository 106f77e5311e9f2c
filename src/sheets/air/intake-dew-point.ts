import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { humidities, standardAtmospheres, supplyPressures } from './bounds.ts';
import { humidityRatio, leastVapour } from './humid-air.ts';
import { vapourAtPressure } from './pressure-dew-point.ts';
import { frostOrDewPoint, hottest, saturationOverWater, saturationPressure } from './saturation.ts';
import { ashrae, derived } from './sources.ts';

interface IntakeDewPointInputs {
  readonly temperature: number;
  readonly relativeHumidity: number;
  readonly atmosphere: number;
  readonly pressure: number;
}

const vapours = (i: IntakeDewPointInputs): readonly [number, number] => {
  const e = i.relativeHumidity * saturationPressure(i.temperature);
  return [e, vapourAtPressure(e, i.atmosphere, i.atmosphere + i.pressure)];
};

/** Compressed and not dried, the air of the room condenses on everything colder than this. */
export const intakeDewPointSheet = defineSheet({
  id: 'air/intake-dew-point',
  version: 1,
  inputs: {
    temperature: numberField('temperature', 'T_1', { least: 203.15, most: 343.15 }),
    relativeHumidity: numberField('relativeHumidity', '\\varphi', humidities),
    atmosphere: numberField('absolutePressure', 'p_a', standardAtmospheres),
    pressure: numberField('gaugePressure', 'p_2', supplyPressures),
  },
  outputs: {
    humidityRatio: numberField('humidityRatio', 'w_1'),
    vapourPressure: numberField('absolutePressure', 'e_2'),
    lineDewPoint: numberField('temperature', 'T_d'),
  },
  formula: [
    'e_1 = \\varphi\\, e_s(T_1), \\quad w_1 = \\frac{\\varepsilon\\, e_1}{p_a - e_1}',
    'e_2 = e_1 \\frac{p_2 + p_a}{p_a}, \\quad T_d = e_s^{-1}(e_2)',
  ],
  limits: [{ code: 'VAPOUR_IDEAL', broken: ({ pressure, atmosphere }) => pressure + atmosphere > 3e5 }],
  sources: [ashrae, derived],
  check: (i) => {
    const [intake, line] = vapours(i);
    const most = saturationOverWater(hottest);
    return [
      ...(intake >= i.atmosphere
        ? [{ code: 'VAPOUR_OVER_TOTAL', path: 'atmosphere', given: i.atmosphere, allowed: `> ${intake}` }]
        : []),
      ...(line < leastVapour || line > most
        ? [{ code: 'DEW_POINT_RANGE', path: 'pressure', given: i.pressure }]
        : []),
    ];
  },
  compute: (i: IntakeDewPointInputs) => {
    const [intake, line] = vapours(i);
    return {
      humidityRatio: humidityRatio(intake, i.atmosphere),
      vapourPressure: line,
      lineDewPoint: frostOrDewPoint(line),
    };
  },
});
