import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { voltages } from './bounds.ts';
import { always, caution } from './caution.ts';
import { circuitTheory } from './sources.ts';

/**
 * Voltage behind a transformer that is fed with another voltage than its own.
 *
 * Method   U_2 = U_1 U_2r/U_1r
 * Symbols  U_1   voltage    scalar  V that arrives at it
 *          U_1r  primary    scalar  V of its plate;  U_2r  secondary  scalar  V of its plate
 * Returns  V
 * Assumes  no drop of its own
 * Cost     O(1)
 * Source   ratio of the turns
 */
export const transformerVoltage = (voltage: number, primary: number, secondary: number): number =>
  (voltage * secondary) / primary;

interface TransformerVoltageInputs {
  readonly voltage: number;
  readonly primary: number;
  readonly secondary: number;
}

export const transformerVoltageSheet = defineSheet({
  id: 'power/transformer-voltage',
  version: 1,
  inputs: {
    voltage: numberField('voltage', 'U_1', voltages),
    primary: numberField('voltage', 'U_{1r}', voltages),
    secondary: numberField('voltage', 'U_{2r}', voltages),
  },
  outputs: { secondary: numberField('voltage', 'U_2') },
  formula: ['U_2 = U_1 \\frac{U_{2r}}{U_{1r}}'],
  limits: [caution, always('TRANSFORMER_OWN_DROP')],
  sources: [circuitTheory],
  compute: (i: TransformerVoltageInputs) => ({
    secondary: transformerVoltage(i.voltage, i.primary, i.secondary),
  }),
});
