import { choiceField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import {
  apparentPowers,
  lengths,
  parallels,
  resistancesPerLength,
  transformerImpedances,
  voltages,
} from './bounds.ts';
import { always, caution } from './caution.ts';
import { independentScript } from './sources.ts';
import { type ImpedanceTolerance, impedanceShare } from './transformer-fault.ts';

export interface FaultPath {
  readonly apparentPower: number;
  readonly voltage: number;
  readonly impedance: number;
  readonly tolerance: ImpedanceTolerance;
  /** X/R of the transformer. */
  readonly reactanceRatio: number;
  readonly length: number;
  readonly resistance: number;
  readonly reactance: number;
  readonly parallel: number;
}

/**
 * Three-phase fault current behind a transformer and a run, impedances added as vectors.
 *
 * Method   I = U/(sqrt(3) |Z_T + Z_c|); Z_T = t z U^2/S, parted by X/R; Z_c = L (r + jx)/n
 * Symbols  as in `FaultPath`, SI; r and x a conductor, cold for the greatest current
 * Returns  A at the terminals, at the end of the run, and there with |Z| added as numbers; X/R at the end
 * Assumes  unlimited supply ahead; bolted fault; nothing from running motors
 * Cost     O(1)
 * Source   three-phase circuit theory
 */
export const faultVector = (
  path: FaultPath,
): {
  readonly terminals: number;
  readonly current: number;
  readonly endRatio: number;
  readonly arithmetic: number;
} => {
  const { apparentPower: S, voltage: U, reactanceRatio: q, length, parallel } = path;
  const transformer = (path.impedance * impedanceShare(path.tolerance) * U * U) / S;
  const rT = transformer / Math.sqrt(1 + q * q);
  const rC = (length * path.resistance) / parallel;
  const xC = (length * path.reactance) / parallel;
  const phase = U / Math.sqrt(3);
  return {
    terminals: phase / transformer,
    current: phase / Math.hypot(rT + rC, q * rT + xC),
    endRatio: (q * rT + xC) / (rT + rC),
    arithmetic: phase / (transformer + Math.hypot(rC, xC)),
  };
};

export const faultVectorSheet = defineSheet({
  id: 'power/fault-vector',
  version: 1,
  inputs: {
    apparentPower: numberField('apparentPower', 'S', apparentPowers),
    voltage: numberField('voltage', 'U', voltages),
    impedance: numberField('ratio', 'z', transformerImpedances),
    tolerance: choiceField<ImpedanceTolerance>('t', ['as-marked', 'least-0.9'], 'as-marked'),
    reactanceRatio: numberField('ratio', 'X/R', { least: 0.1, most: 50 }),
    length: numberField('length', 'L', lengths),
    resistance: numberField('resistancePerLength', 'r', resistancesPerLength),
    reactance: numberField('resistancePerLength', 'x', resistancesPerLength),
    parallel: numberField('count', 'n', { ...parallels, assumed: 1 }),
  },
  outputs: {
    terminals: numberField('current', 'I_{k,T}'),
    current: numberField('current', 'I_k'),
    endRatio: numberField('ratio', '(X/R)_k'),
    arithmetic: numberField('current', 'I_{\\text{arith}}'),
  },
  formula: [
    '|Z_T| = t z \\frac{U^2}{S}, \\quad Z_T = R_T \\left( 1 + j \\tfrac{X}{R} \\right), \\quad Z_c = \\frac{L}{n} (r + j x)',
    '(X/R)_k = \\frac{\\operatorname{Im}(Z_T + Z_c)}{\\operatorname{Re}(Z_T + Z_c)}',
    'I_{k,T} = \\frac{U}{\\sqrt{3}\\, |Z_T|}, \\quad I_k = \\frac{U}{\\sqrt{3}\\, |Z_T + Z_c|}, \\quad I_{\\text{arith}} = \\frac{U}{\\sqrt{3}\\, (|Z_T| + |Z_c|)}',
  ],
  limits: [
    caution,
    always('TRANSFORMER_STIFF'),
    always('COLD_CONDUCTOR'),
    always('FAULT_MOTORS_ADD'),
    {
      code: 'FAULT_ARITHMETIC_LOW',
      broken: (_, { current, arithmetic }) => arithmetic < 0.95 * current,
    },
  ],
  sources: [independentScript],
  compute: (i: FaultPath) => faultVector(i),
});
