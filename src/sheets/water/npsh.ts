import type { Si } from '../../quantity/kinds.ts';
import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { standardGravity } from '../standard-gravity.ts';
import { densities, gaugePressures, heads, heights } from './bounds.ts';
import { derived } from './sources.ts';

/**
 * Net positive suction head that a pump is offered.
 *
 * Method   NPSH = (p_atm + p_t - p_v)/(rho g) + z_s - h_f
 * Symbols  p_atm  atmosphere      scalar  Pa absolute  at the altitude
 *          p_t    tankPressure    scalar  Pa gauge     over the liquid drawn from; 0 for an open tank
 *          p_v    vapourPressure  scalar  Pa absolute  at the hottest
 *          z_s    suctionHeight   scalar  m            surface over the pump: positive flooded, negative a lift
 *          h_f    suctionLoss     scalar  m            of the suction line
 *          rho    density         scalar  kg/m3
 * Returns  head, m; negative where the liquid boils before it reaches the pump
 * Cost     O(1)
 * Source   definition
 */
export const npshAvailable = (
  atmosphere: Si<'absolutePressure'>,
  tankPressure: Si<'gaugePressure'>,
  vapourPressure: Si<'absolutePressure'>,
  suctionHeight: number,
  suctionLoss: number,
  density: number,
): number =>
  (atmosphere + tankPressure - vapourPressure) / (density * standardGravity) + suctionHeight - suctionLoss;

interface NpshInputs {
  readonly atmosphere: Si<'absolutePressure'>;
  readonly tankPressure: Si<'gaugePressure'>;
  readonly vapourPressure: Si<'absolutePressure'>;
  readonly suctionHeight: number;
  readonly suctionLoss: number;
  readonly density: number;
}

export const npshSheet = defineSheet({
  id: 'water/npsh',
  version: 1,
  inputs: {
    atmosphere: numberField('absolutePressure', 'p_{atm}', { least: 1e4, most: 2e5, assumed: 101325 }),
    tankPressure: numberField('gaugePressure', 'p_t', { ...gaugePressures, assumed: 0 }),
    vapourPressure: numberField('absolutePressure', 'p_v', { least: 0, most: 1e8 }),
    suctionHeight: numberField('length', 'z_s', heights),
    suctionLoss: numberField('length', 'h_f', heads),
    density: numberField('density', '\\rho', densities),
  },
  outputs: { npsh: numberField('length', '\\mathrm{NPSH}') },
  formula: ['\\mathrm{NPSH} = \\frac{p_{atm} + p_t - p_v}{\\rho g} + z_s - h_f'],
  limits: [
    { code: 'NPSH_NEGATIVE', broken: (_, { npsh }) => npsh <= 0 },
    { code: 'NPSH_MARGIN', broken: (_, { npsh }) => npsh > 0 },
  ],
  sources: [derived],
  check: ({ atmosphere, tankPressure, vapourPressure }) =>
    vapourPressure >= atmosphere + tankPressure
      ? [
          {
            code: 'NPSH_BOILS',
            path: 'vapourPressure',
            given: vapourPressure,
            allowed: `< ${atmosphere + tankPressure}`,
          },
        ]
      : [],
  compute: (i: NpshInputs) => ({
    npsh: npshAvailable(
      i.atmosphere,
      i.tankPressure,
      i.vapourPressure,
      i.suctionHeight,
      i.suctionLoss,
      i.density,
    ),
  }),
});
