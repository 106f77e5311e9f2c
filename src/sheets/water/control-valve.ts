import type { Si } from '../../quantity/kinds.ts';
import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { absolutePressures, densities, flows } from './bounds.ts';
import { kvNeeded } from './valve-flow.ts';

/**
 * Share of the vapour pressure that the narrowest place reaches when the flow chokes.
 *
 * Method   F_F = 0.96 - 0.28 sqrt(p_v/p_c)
 * Symbols  p_v  vapourPressure    scalar  Pa absolute
 *          p_c  criticalPressure  scalar  Pa absolute
 * Returns  ratio
 * Cost     O(1)
 * Source   IEC 60534-2-1
 */
export const criticalRatioFactor = (
  vapourPressure: Si<'absolutePressure'>,
  criticalPressure: Si<'absolutePressure'>,
): number => 0.96 - 0.28 * Math.sqrt(vapourPressure / criticalPressure);

/**
 * Greatest pressure difference that still raises the flow of a liquid through a valve.
 *
 * Method   dp_max = F_L^2 (p_1 - F_F p_v)
 * Symbols  F_L  recovery        ratio   of the valve, 0.5 to 0.95
 *          p_1  inletPressure   scalar  Pa absolute
 *          F_F  factor          ratio   by `criticalRatioFactor`
 *          p_v  vapourPressure  scalar  Pa absolute
 * Returns  pressure difference, Pa
 * Cost     O(1)
 * Source   IEC 60534-2-1
 */
export const chokedDifference = (
  recovery: number,
  inletPressure: Si<'absolutePressure'>,
  factor: number,
  vapourPressure: Si<'absolutePressure'>,
): number => recovery * recovery * (inletPressure - factor * vapourPressure);

interface ControlValveInputs {
  readonly flow: number;
  readonly inletPressure: Si<'absolutePressure'>;
  readonly outletPressure: Si<'absolutePressure'>;
  readonly density: number;
  readonly vapourPressure: Si<'absolutePressure'>;
  readonly criticalPressure: Si<'absolutePressure'>;
  readonly recovery: number;
}

export const controlValveSheet = defineSheet({
  id: 'water/control-valve',
  version: 1,
  inputs: {
    flow: numberField('volumeFlow', 'Q', flows),
    inletPressure: numberField('absolutePressure', 'p_1', absolutePressures),
    outletPressure: numberField('absolutePressure', 'p_2', absolutePressures),
    density: numberField('density', '\\rho', densities),
    vapourPressure: numberField('absolutePressure', 'p_v', { least: 0, most: 2e7 }),
    criticalPressure: numberField('absolutePressure', 'p_c', { least: 1e6, most: 1e8, assumed: 22.064e6 }),
    recovery: numberField('ratio', 'F_L', { least: 0.1, most: 1, assumed: 0.9 }),
  },
  outputs: {
    criticalRatioFactor: numberField('ratio', 'F_F'),
    chokedDifference: numberField('pressureDifference', '\\Delta p_{\\max}'),
    sizingDifference: numberField('pressureDifference', '\\Delta p_s'),
    kv: numberField('flowCoefficient', 'K_v'),
  },
  formula: [
    'F_F = 0.96 - 0.28 \\sqrt{ \\frac{p_v}{p_c} }, \\quad \\Delta p_{\\max} = F_L^2 (p_1 - F_F p_v)',
    '\\Delta p_s = \\min ( p_1 - p_2,\\ \\Delta p_{\\max} )',
    'K_v = 3600\\, Q \\sqrt{ \\frac{10^5}{\\Delta p_s} \\cdot \\frac{\\rho}{1000} }',
  ],
  limits: [
    {
      code: 'VALVE_CHOKED',
      broken: ({ inletPressure, outletPressure }, { chokedDifference }) =>
        inletPressure - outletPressure >= chokedDifference,
    },
    { code: 'VALVE_FITTINGS_LEFT_OUT', broken: () => true },
  ],
  sources: [{ title: 'IEC 60534-2-1', place: 'incompressible, turbulent, without fittings', mark: 'memory' }],
  check: ({ inletPressure, outletPressure, vapourPressure, criticalPressure }) => {
    if (vapourPressure >= criticalPressure) {
      return [
        {
          code: 'VALVE_VAPOUR',
          path: 'vapourPressure',
          given: vapourPressure,
          allowed: `< ${criticalPressure}`,
        },
      ];
    }
    const flashes = criticalRatioFactor(vapourPressure, criticalPressure) * vapourPressure;
    return [
      ...(outletPressure >= inletPressure
        ? [
            {
              code: 'VALVE_NO_DIFFERENCE',
              path: 'outletPressure',
              given: outletPressure,
              allowed: `< ${inletPressure}`,
            },
          ]
        : []),
      ...(inletPressure <= flashes
        ? [{ code: 'VALVE_VAPOUR', path: 'inletPressure', given: inletPressure, allowed: `> ${flashes}` }]
        : []),
    ];
  },
  compute: (i: ControlValveInputs) => {
    const factor = criticalRatioFactor(i.vapourPressure, i.criticalPressure);
    const choked = chokedDifference(i.recovery, i.inletPressure, factor, i.vapourPressure);
    const sizing = Math.min(i.inletPressure - i.outletPressure, choked);
    return {
      criticalRatioFactor: factor,
      chokedDifference: choked,
      sizingDifference: sizing,
      kv: kvNeeded(i.flow, sizing, i.density),
    };
  },
});
