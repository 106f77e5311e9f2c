import { pipeLoss } from './pipe-loss.ts';
import { valveLoss } from './valve-flow.ts';

/**
 * Pressure lost in one piece of a run: a pipe with its fittings, a valve, a constant loss, or all three.
 *
 * Method   dp = dp_pipe(Q) + 1e5 rho/1000 (3600 Q/Kv)^2 + sign(Q) dp_c
 * Symbols  Q     flow          scalar  m3/s   any sign
 *          D     bore          scalar  m      > 0
 *          L     length        scalar  m      >= 0
 *          eps   roughness     scalar  m      >= 0
 *          K     kSum          scalar  1      >= 0, on the velocity in this bore
 *          Kv    kv            scalar  m3/h   0 stands for no valve
 *          dp_c  constantLoss  scalar  Pa     >= 0, taken as soon as anything flows; none at rest
 *          rho   density       scalar  kg/m3  > 0
 *          mu    viscosity     scalar  Pa s   > 0
 * Returns  pressure difference, Pa, with the sign of the flow
 * Assumes  a constant loss (backflow preventer) is the same at every flow, which is nearly so
 * Cost     O(1), allocates nothing
 * Source   `pipeLoss`, `valveLoss`
 */
export const pieceLoss = (
  flow: number,
  bore: number,
  length: number,
  roughness: number,
  kSum: number,
  kv: number,
  constantLoss: number,
  density: number,
  viscosity: number,
): number =>
  pipeLoss(flow, bore, length, roughness, kSum, density, viscosity) +
  (kv > 0 ? valveLoss(kv, flow, density) : 0) +
  Math.sign(flow) * constantLoss;
