import { choiceField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { apparentPowers, transformerImpedances, voltages } from './bounds.ts';
import { always, caution } from './caution.ts';
import { pointToPointMethod } from './sources.ts';

export type ImpedanceTolerance = 'as-marked' | 'least-0.9';

/** Share of the marked impedance that a transformer may have at least: the US way to the greatest current. */
export const impedanceShare = (tolerance: ImpedanceTolerance): number =>
  tolerance === 'as-marked' ? 1 : 0.9;

/** Rated line current of a three-phase transformer, A: S/(sqrt(3) U). */
export const transformerCurrent = (apparentPower: number, voltage: number): number =>
  apparentPower / (Math.sqrt(3) * voltage);

/**
 * Fault current at the terminals of a three-phase transformer, bolted, all three phases.
 *
 * Method   I_k = I_r/(t z)
 * Symbols  S  apparentPower  scalar  VA
 *          U  voltage        scalar  V line to line, at no load
 *          z  impedance      ratio   marked impedance
 *          t  tolerance      1, or 0.9 for the greatest current
 * Returns  A
 * Assumes  unlimited supply ahead; nothing from running motors
 * Cost     O(1)
 * Source   point-to-point method of calculating fault currents
 */
export const transformerFault = (
  apparentPower: number,
  voltage: number,
  impedance: number,
  tolerance: ImpedanceTolerance,
): number => transformerCurrent(apparentPower, voltage) / (impedance * impedanceShare(tolerance));

interface TransformerFaultInputs {
  readonly apparentPower: number;
  readonly voltage: number;
  readonly impedance: number;
  readonly tolerance: ImpedanceTolerance;
}

export const transformerFaultSheet = defineSheet({
  id: 'power/transformer-fault',
  version: 1,
  inputs: {
    apparentPower: numberField('apparentPower', 'S', apparentPowers),
    voltage: numberField('voltage', 'U', voltages),
    impedance: numberField('ratio', 'z', transformerImpedances),
    tolerance: choiceField<ImpedanceTolerance>('t', ['as-marked', 'least-0.9']),
  },
  outputs: {
    ratedCurrent: numberField('current', 'I_r'),
    faultCurrent: numberField('current', 'I_k'),
    lineToLine: numberField('current', 'I_{k2}'),
  },
  formula: [
    'I_r = \\frac{S}{\\sqrt{3}\\, U}, \\quad I_k = \\frac{I_r}{t\\, z}, \\quad t = 1 \\text{ or } 0.9',
    'I_{k2} = \\frac{\\sqrt{3}}{2} I_k',
  ],
  limits: [
    caution,
    always('TRANSFORMER_STIFF'),
    always('FAULT_TOLERANCE_CHOSEN'),
    { code: 'TRANSFORMER_IMPEDANCE_ODD', broken: ({ impedance }) => impedance < 0.015 || impedance > 0.08 },
  ],
  sources: [pointToPointMethod],
  compute: (i: TransformerFaultInputs) => {
    const faultCurrent = transformerFault(i.apparentPower, i.voltage, i.impedance, i.tolerance);
    return {
      ratedCurrent: transformerCurrent(i.apparentPower, i.voltage),
      faultCurrent,
      lineToLine: (Math.sqrt(3) / 2) * faultCurrent,
    };
  },
});
