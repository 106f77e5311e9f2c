import { choiceField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { absoluteProblems } from './absolute-problems.ts';
import { gaugePressures, saturationTemperatures, standardAtmospheres } from './bounds.ts';
import { leastVapour } from './humid-air.ts';
import {
  dewPointOverWater,
  frostOrDewPoint,
  hottest,
  saturationOverWater,
  saturationPressure,
  triplePoint,
} from './saturation.ts';
import { ashrae, derived } from './sources.ts';

/**
 * Vapour pressure in the same air at another pressure, nothing condensed.
 *
 * Method   e_2 = e_1 p_2/p_1
 * Symbols  e  vapourPressure  scalar  Pa
 *          p  pressures       scalar  Pa absolute  > 0
 * Returns  vapour pressure, Pa
 * Cost     O(1)
 * Source   Dalton: the share of the vapour stays
 */
export const vapourAtPressure = (vapourPressure: number, from: number, to: number): number =>
  (vapourPressure * to) / from;

/** What a dew point below freezing counts: over ice, or over water that is not frozen. */
export type DewPointScale = 'frost point' | 'over water';

interface PressureDewPointInputs {
  readonly dewPoint: number;
  readonly scale: DewPointScale;
  readonly pressure: number;
  readonly otherPressure: number;
  readonly atmosphere: number;
}

/** Vapour pressure at the first and at the other pressure. */
const vapours = (i: PressureDewPointInputs): readonly [number, number] => {
  const e = i.scale === 'over water' ? saturationOverWater(i.dewPoint) : saturationPressure(i.dewPoint);
  return [e, vapourAtPressure(e, i.pressure + i.atmosphere, i.otherPressure + i.atmosphere)];
};

const mostVapour = saturationOverWater(hottest);

export const pressureDewPointSheet = defineSheet({
  id: 'air/pressure-dew-point',
  version: 1,
  inputs: {
    dewPoint: numberField('temperature', 'T_1', saturationTemperatures),
    scale: choiceField<DewPointScale>('\\text{scale}', ['frost point', 'over water'], 'frost point'),
    pressure: numberField('gaugePressure', 'p_1', gaugePressures),
    otherPressure: numberField('gaugePressure', 'p_2', { ...gaugePressures, assumed: 0 }),
    atmosphere: numberField('absolutePressure', 'p_a', standardAtmospheres),
  },
  outputs: {
    vapourPressure: numberField('absolutePressure', 'e_1'),
    otherVapourPressure: numberField('absolutePressure', 'e_2'),
    frostPoint: numberField('temperature', 'T_2'),
    dewPointOverWater: numberField('temperature', 'T_{2,w}'),
  },
  formula: [
    'e_1 = e_s(T_1), \\quad e_2 = e_1 \\frac{p_2 + p_a}{p_1 + p_a}',
    'T_2 = e_s^{-1}(e_2) \\ \\text{(over ice below } 0.01\\,^\\circ\\mathrm{C}), \\quad T_{2,w} = e_{s,w}^{-1}(e_2)',
  ],
  limits: [
    {
      code: 'DEW_POINT_TWO_SCALES',
      broken: ({ dewPoint }, { frostPoint }) => Math.min(dewPoint, frostPoint) < triplePoint,
    },
    {
      code: 'VAPOUR_IDEAL',
      broken: ({ pressure, otherPressure, atmosphere }) =>
        Math.max(pressure, otherPressure) + atmosphere > 3e5,
    },
  ],
  sources: [ashrae, derived],
  check: (i) => {
    const problems = absoluteProblems({ pressure: i.pressure, otherPressure: i.otherPressure }, i.atmosphere);
    if (problems.length > 0) return problems;
    const [one, other] = vapours(i);
    return one < i.pressure + i.atmosphere && other >= leastVapour && other <= mostVapour
      ? []
      : [{ code: 'DEW_POINT_RANGE', path: 'dewPoint', given: i.dewPoint }];
  },
  compute: (i: PressureDewPointInputs) => {
    const [vapourPressure, otherVapourPressure] = vapours(i);
    return {
      vapourPressure,
      otherVapourPressure,
      frostPoint: frostOrDewPoint(otherVapourPressure),
      dewPointOverWater: dewPointOverWater(otherVapourPressure),
    };
  },
});
