import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { apparentPowers, voltages } from './bounds.ts';
import { always, caution } from './caution.ts';

/**
 * Nameplate of the small transformer that is wired to lift or lower a voltage (buck-boost).
 *
 * Method   S_T = S (U_H - U_L)/U_H
 * Symbols  S  load  scalar  VA;  U_H, U_L  the higher and the lower voltage, V
 * Returns  VA
 * Assumes  no losses
 * Cost     O(1)
 * Source   power balance of an ideal autotransformer
 */
export const autotransformerRating = (load: number, one: number, other: number): number =>
  (load * Math.abs(one - other)) / Math.max(one, other);

interface AutotransformerInputs {
  readonly load: number;
  readonly supplyVoltage: number;
  readonly loadVoltage: number;
}

export const autotransformerSheet = defineSheet({
  id: 'power/autotransformer',
  version: 1,
  inputs: {
    load: numberField('apparentPower', 'S', apparentPowers),
    supplyVoltage: numberField('voltage', 'U_1', voltages),
    loadVoltage: numberField('voltage', 'U_2', voltages),
  },
  outputs: {
    rating: numberField('apparentPower', 'S_T'),
    supplyCurrent: numberField('current', 'I_1'),
    loadCurrent: numberField('current', 'I_2'),
  },
  formula: [
    'S_T = S \\frac{U_H - U_L}{U_H}',
    'I_1 = \\frac{S}{\\sqrt{3}\\, U_1}, \\quad I_2 = \\frac{S}{\\sqrt{3}\\, U_2}',
  ],
  limits: [
    caution,
    always('TRANSFORMER_CHANGES_NO_FREQUENCY'),
    always('AUTOTRANSFORMER_NO_NEUTRAL'),
    {
      code: 'AUTOTRANSFORMER_WIDE',
      broken: ({ supplyVoltage, loadVoltage }) =>
        Math.abs(supplyVoltage - loadVoltage) > 0.3 * Math.max(supplyVoltage, loadVoltage),
    },
  ],
  sources: [{ title: 'ideal autotransformer', place: 'power balance, derived', mark: 'computed' }],
  compute: (i: AutotransformerInputs) => ({
    rating: autotransformerRating(i.load, i.supplyVoltage, i.loadVoltage),
    supplyCurrent: i.load / (Math.sqrt(3) * i.supplyVoltage),
    loadCurrent: i.load / (Math.sqrt(3) * i.loadVoltage),
  }),
});
