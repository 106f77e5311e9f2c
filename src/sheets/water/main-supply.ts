import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { flows, gaugePressures } from './bounds.ts';

/**
 * Gauge pressure that a town main keeps at a flow, from one flow test.
 *
 * Method   p = p_s - (p_s - p_r) (Q/Q_t)^n
 * Symbols  p_s  staticPressure    scalar  Pa gauge  nothing flowing
 *          p_r  residualPressure  scalar  Pa gauge  while Q_t flows; same gauge, same height
 *          Q_t  testFlow          scalar  m3/s      > 0
 *          n    exponent          ratio   1.85 where long mains lose it, 2 where meter, valves and short pipes do
 *          Q    flow              scalar  m3/s      any sign
 * Returns  gauge pressure at the height of the test gauge, Pa; may fall below atmosphere, which is an extrapolation
 * Assumes  the main stands as it did at the test: other takers, hour and season move it
 * Cost     O(1), one power
 * Source   NFPA 291 practice, as public calculation pages give it: exponent 0.54 = 1/1.852 of the inverse form
 */
export const mainPressure = (
  staticPressure: number,
  residualPressure: number,
  testFlow: number,
  exponent: number,
  flow: number,
): number =>
  staticPressure -
  (staticPressure - residualPressure) * Math.sign(flow) * (Math.abs(flow) / testFlow) ** exponent;

interface MainSupplyInputs {
  readonly staticPressure: number;
  readonly residualPressure: number;
  readonly testFlow: number;
  readonly exponent: number;
  readonly flow: number;
}

export const mainSupplySheet = defineSheet({
  id: 'water/main-supply',
  version: 1,
  inputs: {
    staticPressure: numberField('gaugePressure', 'p_s', gaugePressures),
    residualPressure: numberField('gaugePressure', 'p_r', gaugePressures),
    testFlow: numberField('volumeFlow', 'Q_t', { least: 1e-7, most: 100 }),
    exponent: numberField('ratio', 'n', { least: 1, most: 2.5, assumed: 1.85 }),
    flow: numberField('volumeFlow', 'Q', flows),
  },
  outputs: {
    pressure: numberField('gaugePressure', 'p'),
    testDrop: numberField('ratio', '\\frac{p_s - p_r}{p_s}'),
  },
  formula: ['p = p_s - (p_s - p_r) \\left( \\frac{Q}{Q_t} \\right)^n'],
  limits: [
    { code: 'MAIN_TEST_WEAK', broken: (_, { testDrop }) => testDrop < 0.1 },
    { code: 'MAIN_EXTRAPOLATED', broken: ({ flow, testFlow }) => flow > 1.5 * testFlow },
    { code: 'MAIN_BELOW_ATMOSPHERE', broken: (_, { pressure }) => pressure < 0 },
  ],
  sources: [
    {
      title: 'NFPA 291, recommended practice for fire flow testing',
      place: 'rated capacity formula, read second-hand on public calculation pages',
      mark: 'read',
    },
  ],
  check: ({ staticPressure, residualPressure }) => [
    ...(residualPressure >= staticPressure
      ? [
          {
            code: 'MAIN_RESIDUAL',
            path: 'residualPressure',
            given: residualPressure,
            allowed: `< ${staticPressure}`,
          },
        ]
      : []),
    ...(staticPressure <= 0
      ? [{ code: 'MAIN_STATIC', path: 'staticPressure', given: staticPressure, allowed: '> 0' }]
      : []),
  ],
  compute: (i: MainSupplyInputs) => ({
    pressure: mainPressure(i.staticPressure, i.residualPressure, i.testFlow, i.exponent, i.flow),
    testDrop: (i.staticPressure - i.residualPressure) / i.staticPressure,
  }),
});
