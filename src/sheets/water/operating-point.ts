import { brentRoot } from '../brent-root.ts';
import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { standardGravity } from '../standard-gravity.ts';
import {
  bores,
  densities,
  dynamicViscosities,
  exponents,
  heads,
  heights,
  lengths,
  lossCoefficients,
  roughnesses,
  speedRatios,
} from './bounds.ts';
import { pipeLoss } from './pipe-loss.ts';
import { type PumpCurve, pumpHead } from './pump-curve.ts';
import { roughnessProblems } from './roughness-problems.ts';
import { darcyWeisbach, epanetManual } from './sources.ts';

/**
 * Flow at which a pump gives just the head that the system asks.
 *
 * Method   root of H_pump(Q, s) - H_system(Q), bracketed from rest upwards, by `brentRoot`
 * Symbols  curve       A, B, C of `fitPumpCurve`
 *          s  speedRatio  scalar  ratio
 *          H_system  systemHead  function of m3/s giving m; must not fall with the flow
 * Returns  flow, m3/s; 0 where the pump cannot lift to the static head; NaN where no flow up to 1e6 m3/s balances
 * Cost     about 10 calls of the system
 * Source   the crossing of the two curves
 */
export const operatingFlow = (
  curve: PumpCurve,
  speedRatio: number,
  systemHead: (flow: number) => number,
): number => {
  const surplus = (flow: number): number => pumpHead(curve, flow, speedRatio) - systemHead(flow);
  if (surplus(0) <= 0) return 0;
  let high = 1e-6;
  while (surplus(high) > 0) {
    high *= 2;
    if (high > 1e6) return Number.NaN;
  }
  return brentRoot(surplus, high > 1e-6 ? high / 2 : 0, high);
};

interface OperatingPointInputs {
  readonly shutOffHead: number;
  readonly factor: number;
  readonly exponent: number;
  readonly speedRatio: number;
  readonly staticHead: number;
  readonly bore: number;
  readonly length: number;
  readonly roughness: number;
  readonly fittings: number;
  readonly density: number;
  readonly viscosity: number;
}

export const operatingPointSheet = defineSheet({
  id: 'water/operating-point',
  version: 1,
  inputs: {
    shutOffHead: numberField('length', 'A', heads),
    factor: numberField('ratio', 'B', { least: 0, most: 1e100 }),
    exponent: numberField('ratio', 'C', exponents),
    speedRatio: numberField('ratio', 's', { ...speedRatios, assumed: 1 }),
    staticHead: numberField('length', 'H_{st}', heights),
    bore: numberField('length', 'D', bores),
    length: numberField('length', 'L', lengths),
    roughness: numberField('length', '\\varepsilon', roughnesses),
    fittings: numberField('ratio', '\\Sigma K', { ...lossCoefficients, assumed: 0 }),
    density: numberField('density', '\\rho', densities),
    viscosity: numberField('dynamicViscosity', '\\mu', dynamicViscosities),
  },
  outputs: {
    flow: numberField('volumeFlow', 'Q'),
    head: numberField('length', 'H'),
    hydraulicPower: numberField('power', 'P_h'),
    leastSpeedRatio: numberField('ratio', 's_{\\min}'),
    residual: numberField('length', '\\Delta H'),
  },
  formula: [
    's^2 A - s^{2 - C} B Q^C = H_{st} + \\frac{\\Delta p(Q)}{\\rho g}',
    'P_h = \\rho g Q H, \\quad s_{\\min} = \\sqrt{ \\frac{H_{st}}{A} }',
  ],
  limits: [
    { code: 'PUMP_CANNOT_LIFT', broken: (_, { flow }) => flow === 0 },
    { code: 'PUMP_SPEED_FAR', broken: ({ speedRatio }) => speedRatio < 0.7 || speedRatio > 1.3 },
    { code: 'PUMP_RUN_OUT', broken: (_, { head }) => head < 0 },
  ],
  sources: [epanetManual, darcyWeisbach],
  check: ({ roughness, bore, shutOffHead }) => [
    ...roughnessProblems([roughness], [bore]),
    ...(shutOffHead > 0
      ? []
      : [{ code: 'PUMP_SHUT_OFF', path: 'shutOffHead', given: shutOffHead, allowed: '> 0' }]),
  ],
  compute: (i: OperatingPointInputs) => {
    const curve: PumpCurve = { ...i, residual: 0 };
    const systemHead = (flow: number): number =>
      i.staticHead +
      pipeLoss(flow, i.bore, i.length, i.roughness, i.fittings, i.density, i.viscosity) /
        (i.density * standardGravity);
    const flow = operatingFlow(curve, i.speedRatio, systemHead);
    const head = pumpHead(curve, flow, i.speedRatio);
    return {
      flow,
      head,
      hydraulicPower: i.density * standardGravity * flow * head,
      leastSpeedRatio: Math.sqrt(Math.max(0, i.staticHead) / i.shutOffHead),
      // at rest the check valve holds the difference: nothing is left unbalanced
      residual: flow === 0 ? 0 : head - systemHead(flow),
    };
  },
});
