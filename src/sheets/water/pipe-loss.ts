import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { standardGravity } from '../standard-gravity.ts';
import {
  bores,
  densities,
  dynamicViscosities,
  flows,
  lengths,
  lossCoefficients,
  roughnesses,
} from './bounds.ts';
import { frictionFactor, laminarBelow, turbulentAbove } from './friction-factor.ts';
import { pipeVelocity } from './pipe-velocity.ts';
import { reynoldsNumber } from './reynolds-number.ts';
import { roughnessProblems } from './roughness-problems.ts';
import { darcyWeisbach } from './sources.ts';

/**
 * Pressure lost along one pipe of constant bore and in the fittings on it.
 *
 * Method   dp = (f L/D + sum K) rho v |v| / 2,  v = 4 Q/(pi D^2);
 *          where laminar f L/D rho v^2/2 is written 128 mu L Q/(pi D^4), which stays finite at rest
 * Symbols  Q      flow       scalar  m3/s   any sign: the loss has the sign of the flow
 *          D      bore       scalar  m      > 0
 *          L      length     scalar  m      >= 0
 *          eps    roughness  scalar  m      >= 0, under half the bore
 *          sum K  kSum       scalar  1      >= 0, on the velocity in this bore
 *          rho    density    scalar  kg/m3  > 0
 *          mu     viscosity  scalar  Pa s   > 0
 * Returns  pressure difference, Pa; rises strictly with the flow
 * Assumes  full pipe, developed flow, K independent of the Reynolds number
 * Cost     O(1), allocates nothing
 * Source   Darcy-Weisbach; friction factor of `frictionFactor`
 */
export const pipeLoss = (
  flow: number,
  bore: number,
  length: number,
  roughness: number,
  kSum: number,
  density: number,
  viscosity: number,
): number => {
  const v = flow / (0.25 * Math.PI * bore * bore);
  const re = (density * Math.abs(v) * bore) / viscosity;
  const dynamic = 0.5 * density * v * Math.abs(v);
  if (re <= laminarBelow) return (32 * viscosity * length * v) / (bore * bore) + kSum * dynamic;
  return ((frictionFactor(re, roughness / bore) * length) / bore + kSum) * dynamic;
};

interface PipeLossInputs {
  readonly flow: number;
  readonly bore: number;
  readonly length: number;
  readonly roughness: number;
  readonly fittings: number;
  readonly density: number;
  readonly viscosity: number;
}

export const pipeLossSheet = defineSheet({
  id: 'water/pipe-loss',
  version: 1,
  inputs: {
    flow: numberField('volumeFlow', 'Q', flows),
    bore: numberField('length', 'D', bores),
    length: numberField('length', 'L', lengths),
    roughness: numberField('length', '\\varepsilon', roughnesses),
    fittings: numberField('ratio', '\\Sigma K', { ...lossCoefficients, assumed: 0 }),
    density: numberField('density', '\\rho', densities),
    viscosity: numberField('dynamicViscosity', '\\mu', dynamicViscosities),
  },
  outputs: {
    velocity: numberField('velocity', 'v'),
    reynolds: numberField('ratio', '\\mathrm{Re}'),
    straightLoss: numberField('pressureDifference', '\\Delta p_f'),
    fittingLoss: numberField('pressureDifference', '\\Delta p_m'),
    loss: numberField('pressureDifference', '\\Delta p'),
    headLoss: numberField('length', 'h'),
  },
  formula: [
    'v = \\frac{4 Q}{\\pi D^2}, \\quad \\mathrm{Re} = \\frac{\\rho v D}{\\mu}',
    '\\Delta p = \\left( f \\frac{L}{D} + \\Sigma K \\right) \\frac{\\rho v^2}{2}, \\quad h = \\frac{\\Delta p}{\\rho g}',
  ],
  limits: [
    {
      code: 'FRICTION_TRANSITION',
      broken: (_, { reynolds }) => reynolds > laminarBelow && reynolds < turbulentAbove,
    },
    { code: 'FRICTION_ROUGHNESS', broken: ({ roughness, bore }) => roughness > 0.05 * bore },
  ],
  sources: [darcyWeisbach],
  check: ({ roughness, bore }) => roughnessProblems([roughness], [bore]),
  compute: ({ flow, bore, length, roughness, fittings, density, viscosity }: PipeLossInputs) => {
    const velocity = pipeVelocity(flow, bore);
    const loss = pipeLoss(flow, bore, length, roughness, fittings, density, viscosity);
    const straightLoss = pipeLoss(flow, bore, length, roughness, 0, density, viscosity);
    return {
      velocity,
      reynolds: reynoldsNumber(velocity, bore, viscosity / density),
      straightLoss,
      fittingLoss: loss - straightLoss,
      loss,
      headLoss: loss / (density * standardGravity),
    };
  },
});
