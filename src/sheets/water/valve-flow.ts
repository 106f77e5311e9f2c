import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { densities, flowCoefficients, pressureDifferences } from './bounds.ts';
import { kvStandard } from './sources.ts';

/** Pa in the bar, and kg/m3 of the water, that define Kv; s in its hour. */
const unitLoss = 1e5;
const unitDensity = 1000;
const hour = 3600;

/**
 * Flow through a valve of known Kv.
 *
 * Method   Q = Kv/3600 sqrt(dp/1e5 * 1000/rho)
 * Symbols  Kv   kv                  scalar  m3/h at 1 bar of water  >= 0
 *          dp   pressureDifference  scalar  Pa                      any sign: the flow has its sign
 *          rho  density             scalar  kg/m3                   > 0
 * Returns  flow, m3/s
 * Assumes  turbulent, not choked, Kv the same in both directions
 * Cost     O(1)
 * Source   IEC 60534-1, definition of the flow coefficient
 */
export const valveFlow = (kv: number, pressureDifference: number, density: number): number =>
  Math.sign(pressureDifference) *
  (kv / hour) *
  Math.sqrt((Math.abs(pressureDifference) / unitLoss) * (unitDensity / density));

/**
 * Pressure that a valve of known Kv takes from a flow: the inverse of `valveFlow`.
 *
 * Method   dp = 1e5 rho/1000 (3600 Q/Kv)^2
 * Symbols  Kv   kv       scalar  m3/h   > 0
 *          Q    flow     scalar  m3/s   any sign: the loss has its sign
 *          rho  density  scalar  kg/m3  > 0
 * Returns  pressure difference, Pa
 * Cost     O(1)
 * Source   IEC 60534-1, definition of the flow coefficient
 */
export const valveLoss = (kv: number, flow: number, density: number): number => {
  const ratio = (hour * flow) / kv;
  return (unitLoss * density * ratio * Math.abs(ratio)) / unitDensity;
};

/**
 * Kv that passes a flow at a pressure difference: the inverse of `valveFlow`.
 *
 * Method   Kv = 3600 Q sqrt(1e5/dp * rho/1000)
 * Symbols  Q    flow                scalar  m3/s
 *          dp   pressureDifference  scalar  Pa     > 0
 *          rho  density             scalar  kg/m3  > 0
 * Returns  Kv, m3/h at 1 bar
 * Cost     O(1)
 * Source   IEC 60534-1, definition of the flow coefficient
 */
export const kvNeeded = (flow: number, pressureDifference: number, density: number): number =>
  hour * flow * Math.sqrt((unitLoss / pressureDifference) * (density / unitDensity));

export const valveFlowSheet = defineSheet({
  id: 'water/valve-flow',
  version: 1,
  inputs: {
    kv: numberField('flowCoefficient', 'K_v', flowCoefficients),
    pressureDifference: numberField('pressureDifference', '\\Delta p', pressureDifferences),
    density: numberField('density', '\\rho', densities),
  },
  outputs: { flow: numberField('volumeFlow', 'Q') },
  formula: ['Q = \\frac{K_v}{3600} \\sqrt{ \\frac{\\Delta p}{10^5} \\cdot \\frac{1000}{\\rho} }'],
  limits: [{ code: 'VALVE_BACKWARD', broken: ({ pressureDifference }) => pressureDifference < 0 }],
  sources: [kvStandard],
  compute: (i: { readonly kv: number; readonly pressureDifference: number; readonly density: number }) => ({
    flow: valveFlow(i.kv, i.pressureDifference, i.density),
  }),
});
