import { choiceField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { powerFactors, powers, voltages } from './bounds.ts';
import { always, caution } from './caution.ts';
import type { Phases } from './motor-current-us.ts';
import { motorInputCurrent } from './motor-input.ts';
import { circuitTheory } from './sources.ts';

interface LoadCurrentInputs {
  readonly power: number;
  readonly voltage: number;
  readonly phases: Phases;
  readonly powerFactor: number;
}

/**
 * Line current of a load from the power that it draws.
 *
 * Method   I = P/(sqrt(3) U cos(phi)); without sqrt(3) on a single phase
 * Symbols  P    power        scalar  W  drawn from the supply, not at a shaft
 *          U    voltage      scalar  V  line to line; of the circuit on a single phase
 *          cos  powerFactor  ratio
 * Returns  A
 * Assumes  balanced on three phases
 * Cost     O(1)
 * Source   three-phase circuit theory; `motorInputCurrent` with nothing lost
 */
export const loadCurrent = (power: number, voltage: number, powerFactor: number, phases: Phases): number =>
  motorInputCurrent(power, voltage, 1, powerFactor, phases);

export const loadCurrentSheet = defineSheet({
  id: 'power/load-current',
  version: 1,
  inputs: {
    power: numberField('power', 'P', powers),
    voltage: numberField('voltage', 'U', voltages),
    phases: choiceField<Phases>('\\text{phases}', ['three-phase', 'single-phase'], 'three-phase'),
    powerFactor: numberField('ratio', '\\cos\\varphi', { ...powerFactors, assumed: 1 }),
  },
  outputs: {
    current: numberField('current', 'I'),
    apparentPower: numberField('apparentPower', 'S'),
  },
  formula: [
    'S = \\frac{P}{\\cos\\varphi}, \\quad I = \\frac{S}{\\sqrt{3}\\, U} \\ (\\text{single phase: } S / U)',
  ],
  limits: [caution, always('LOAD_BALANCED')],
  sources: [circuitTheory],
  compute: (i: LoadCurrentInputs) => ({
    current: loadCurrent(i.power, i.voltage, i.powerFactor, i.phases),
    apparentPower: i.power / i.powerFactor,
  }),
});
