import { frictionFactor, laminarBelow } from './friction-factor.ts';

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
