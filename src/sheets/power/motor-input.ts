import { choiceField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { efficiencies, powerFactors, powers, voltages } from './bounds.ts';
import { always, caution } from './caution.ts';
import type { Phases } from './motor-current-us.ts';
import { circuitTheory } from './sources.ts';

/** Voltage times this gives apparent power by line current: root 3 or 1. */
export const phaseFactor = (phases: Phases): number => (phases === 'three-phase' ? Math.sqrt(3) : 1);

/**
 * Line current of a motor from the power at its shaft.
 *
 * Method   I = P/(sqrt(3) U cos(phi) eta); without sqrt(3) on a single phase
 * Symbols  P    shaftPower   scalar  W
 *          U    voltage      scalar  V line to line
 *          eta  efficiency   ratio   at this load
 *          cos  powerFactor  ratio   at this load
 * Returns  A
 * Cost     O(1)
 * Source   three-phase circuit theory
 */
export const motorInputCurrent = (
  shaftPower: number,
  voltage: number,
  efficiency: number,
  powerFactor: number,
  phases: Phases,
): number => shaftPower / (phaseFactor(phases) * voltage * powerFactor * efficiency);

interface MotorInputInputs {
  readonly shaftPower: number;
  readonly voltage: number;
  readonly efficiency: number;
  readonly powerFactor: number;
  readonly phases: Phases;
}

export const motorInputSheet = defineSheet({
  id: 'power/motor-input',
  version: 1,
  inputs: {
    shaftPower: numberField('power', 'P', powers),
    voltage: numberField('voltage', 'U', voltages),
    efficiency: numberField('ratio', '\\eta', efficiencies),
    powerFactor: numberField('ratio', '\\cos\\varphi', powerFactors),
    phases: choiceField<Phases>('\\text{phases}', ['three-phase', 'single-phase'], 'three-phase'),
  },
  outputs: {
    current: numberField('current', 'I'),
    inputPower: numberField('power', 'P_1'),
    apparentPower: numberField('apparentPower', 'S'),
  },
  formula: [
    'P_1 = \\frac{P}{\\eta}, \\quad S = \\frac{P_1}{\\cos\\varphi}, \\quad I = \\frac{S}{\\sqrt{3}\\, U}',
    'I = \\frac{S}{U} \\text{ on a single phase}',
  ],
  limits: [caution, always('MOTOR_INPUT_NOT_FOR_US_WIRES')],
  sources: [circuitTheory],
  compute: (i: MotorInputInputs) => ({
    current: motorInputCurrent(i.shaftPower, i.voltage, i.efficiency, i.powerFactor, i.phases),
    inputPower: i.shaftPower / i.efficiency,
    apparentPower: i.shaftPower / i.efficiency / i.powerFactor,
  }),
});
