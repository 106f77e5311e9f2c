import { choiceField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { somePowers, voltages } from './bounds.ts';
import { always, caution } from './caution.ts';
import type { Phases } from './motor-current-us.ts';
import { phaseFactor } from './motor-input.ts';

export type HeaterConnection = 'unchanged' | 'delta-to-star' | 'star-to-delta';

/** Voltage over an element against the one it had, at the same line voltage. */
const elementShare = (connection: HeaterConnection): number => {
  switch (connection) {
    case 'unchanged':
      return 1;
    case 'delta-to-star':
      return 1 / Math.sqrt(3);
    case 'star-to-delta':
      return Math.sqrt(3);
  }
};

/**
 * Power of a resistance heater at another voltage or connection.
 *
 * Method   P_2 = P_1 (c U_2/U_1)^2; c = 1, 1/sqrt(3) from delta to star, sqrt(3) from star to delta
 * Symbols  P_1  power    scalar  W at the rated voltage;  U_1  rated  V;  U_2  supply  V
 * Returns  W
 * Assumes  constant resistance
 * Cost     O(1)
 * Source   Ohm's law
 */
export const heaterPower = (
  power: number,
  rated: number,
  supply: number,
  connection: HeaterConnection,
): number => power * ((elementShare(connection) * supply) / rated) ** 2;

interface HeaterInputs {
  readonly power: number;
  readonly ratedVoltage: number;
  readonly supplyVoltage: number;
  readonly phases: Phases;
  readonly connection: HeaterConnection;
}

export const heaterSheet = defineSheet({
  id: 'power/heater',
  version: 1,
  inputs: {
    power: numberField('power', 'P_1', somePowers),
    ratedVoltage: numberField('voltage', 'U_1', voltages),
    supplyVoltage: numberField('voltage', 'U_2', voltages),
    phases: choiceField<Phases>('\\text{phases}', ['three-phase', 'single-phase'], 'three-phase'),
    connection: choiceField<HeaterConnection>(
      '\\text{connection}',
      ['unchanged', 'delta-to-star', 'star-to-delta'],
      'unchanged',
    ),
  },
  outputs: {
    power: numberField('power', 'P_2'),
    current: numberField('current', 'I_2'),
    elementVoltage: numberField('ratio', 'e'),
    heatUpTime: numberField('ratio', 't_2 / t_1'),
  },
  formula: [
    'e = c \\frac{U_2}{U_1}, \\quad P_2 = e^2 P_1, \\quad c = 1,\\ \\tfrac{1}{\\sqrt{3}} \\text{ or } \\sqrt{3}',
    'I_2 = \\frac{P_2}{\\sqrt{3}\\, U_2} \\ (\\text{single phase: } P_2 / U_2), \\quad \\frac{t_2}{t_1} = \\frac{P_1}{P_2}',
  ],
  limits: [
    caution,
    { code: 'HEATER_OVER_VOLTAGE', broken: (_, { elementVoltage }) => elementVoltage > 1.05 },
    { code: 'HEATER_SLOW', broken: (_, { heatUpTime }) => heatUpTime > 1.1 },
    always('HEATER_PROTECTION_MOVES'),
  ],
  sources: [{ title: 'Ohm’s law', place: 'constant resistance', mark: 'computed' }],
  check: ({ phases, connection }) =>
    phases === 'single-phase' && connection !== 'unchanged'
      ? [{ code: 'HEATER_NO_STAR', path: 'connection', given: connection, allowed: ['unchanged'] }]
      : [],
  compute: (i: HeaterInputs) => {
    const power = heaterPower(i.power, i.ratedVoltage, i.supplyVoltage, i.connection);
    return {
      power,
      current: power / (phaseFactor(i.phases) * i.supplyVoltage),
      elementVoltage: (elementShare(i.connection) * i.supplyVoltage) / i.ratedVoltage,
      heatUpTime: i.power / power,
    };
  },
});
