import { choiceField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { apparentPowers, faultCurrents, transformerImpedances, voltages } from './bounds.ts';
import { always, caution } from './caution.ts';
import { independentScript, pointToPointMethod } from './sources.ts';
import { type ImpedanceTolerance, impedanceShare } from './transformer-fault.ts';

interface FaultBehindTransformer {
  readonly available: number;
  /** X/R of all that lies ahead. */
  readonly sourceRatio: number;
  readonly primary: number;
  readonly apparentPower: number;
  readonly impedance: number;
  readonly tolerance: ImpedanceTolerance;
  /** X/R of the transformer. */
  readonly reactanceRatio: number;
  readonly secondary: number;
}

/**
 * Three-phase fault current behind a second transformer, from the one that is known ahead of it.
 *
 * Method   Z_1 = U_1/(sqrt(3) I_1) (U_2/U_1)^2 seen from behind; Z_T = t z U_2^2/S; I = U_2/(sqrt(3) |Z_1 + Z_T|)
 * Symbols  as in `FaultBehindTransformer`, SI
 * Returns  A: as vectors; with |Z| added as numbers; and with an unlimited supply ahead, which is the most there can be
 * Assumes  bolted fault; nothing from running motors
 * Cost     O(1)
 * Source   three-phase circuit theory; numbers added: point-to-point method, second transformer
 */
export const faultBehindTransformer = (
  i: FaultBehindTransformer,
): { readonly current: number; readonly arithmetic: number; readonly most: number } => {
  const ahead = (i.secondary * i.secondary) / (Math.sqrt(3) * i.primary * i.available);
  const own = (i.impedance * impedanceShare(i.tolerance) * i.secondary * i.secondary) / i.apparentPower;
  const rAhead = ahead / Math.hypot(1, i.sourceRatio);
  const rOwn = own / Math.hypot(1, i.reactanceRatio);
  const phase = i.secondary / Math.sqrt(3);
  return {
    current: phase / Math.hypot(rAhead + rOwn, i.sourceRatio * rAhead + i.reactanceRatio * rOwn),
    arithmetic: phase / (ahead + own),
    most: phase / own,
  };
};

const ratios = { least: 0.1, most: 50 } as const;

export const faultBehindTransformerSheet = defineSheet({
  id: 'power/fault-behind-transformer',
  version: 1,
  inputs: {
    available: numberField('current', 'I_1', faultCurrents),
    sourceRatio: numberField('ratio', '(X/R)_1', ratios),
    primary: numberField('voltage', 'U_1', { least: 1, most: 36e3 }),
    apparentPower: numberField('apparentPower', 'S', apparentPowers),
    impedance: numberField('ratio', 'z', transformerImpedances),
    tolerance: choiceField<ImpedanceTolerance>('t', ['as-marked', 'least-0.9'], 'as-marked'),
    reactanceRatio: numberField('ratio', '(X/R)_T', ratios),
    secondary: numberField('voltage', 'U_2', voltages),
  },
  outputs: {
    current: numberField('current', 'I_k'),
    arithmetic: numberField('current', 'I_{\\text{arith}}'),
    most: numberField('current', 'I_{\\max}'),
  },
  formula: [
    '|Z_1| = \\frac{U_1}{\\sqrt{3}\\, I_1} \\left( \\frac{U_2}{U_1} \\right)^2, \\quad |Z_T| = t z \\frac{U_2^2}{S}',
    'I_k = \\frac{U_2}{\\sqrt{3}\\, |Z_1 + Z_T|}, \\quad I_{\\text{arith}} = \\frac{U_2}{\\sqrt{3}\\, (|Z_1| + |Z_T|)}, \\quad I_{\\max} = \\frac{U_2}{\\sqrt{3}\\, |Z_T|}',
  ],
  limits: [
    caution,
    always('FAULT_MOTORS_ADD'),
    {
      code: 'FAULT_ARITHMETIC_LOW',
      broken: (_, { current, arithmetic }) => arithmetic < 0.95 * current,
    },
  ],
  sources: [independentScript, pointToPointMethod],
  compute: (i: FaultBehindTransformer) => faultBehindTransformer(i),
});
