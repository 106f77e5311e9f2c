import { choiceField, listField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { failureRates } from './bounds.ts';
import { always, guardingCaution } from './caution.ts';
import { noLevelProblems } from './level-of-rate.ts';
import { type Level, levelOf, levels, lowerLevel } from './levels.ts';
import { iso13849 } from './sources.ts';

/** Rate of a function whose subsystems must all work: the sum of theirs. */
export const rateOfSubsystems = (rates: readonly number[]): number =>
  rates.reduce((sum, rate) => sum + rate, 0);

interface SubsystemsInputs {
  readonly rates: readonly number[];
  readonly lowest: Level;
}

/**
 * Performance level of a function made of subsystems in series.
 *
 * Method   PFHd = sum PFHd_i;  PL = the lower of the level of the sum and the lowest of the subsystems
 * Symbols  PFHd_i  rates   [n]   1/s
 *          PL_i    lowest  a to e  that any subsystem states
 * Returns  rate 1/s, level of the sum, level
 * Cost     O(n)
 * Source   ISO 13849-1:2006, combination of parts
 */
export const subsystems = ({ rates, lowest }: SubsystemsInputs) => {
  const rate = rateOfSubsystems(rates);
  const ofSum = levelOf(rate);
  return { rate, ofSum, level: lowerLevel(ofSum, lowest) };
};

export const subsystemsSheet = defineSheet({
  id: 'safety/subsystems',
  version: 1,
  inputs: {
    rates: listField('failureRate', 'PFH_{d,i}', failureRates),
    lowest: choiceField<Level>('\\min PL_i', levels),
  },
  outputs: {
    rate: numberField('failureRate', 'PFH_d'),
    ofSum: choiceField<Level>('PL_\\Sigma', levels),
    level: choiceField<Level>('PL', levels),
  },
  formula: ['PFH_d = \\sum_i PFH_{d,i}, \\quad PL = \\min(PL(PFH_d),\\ \\min_i PL_i)'],
  limits: [
    guardingCaution,
    { code: 'LEVEL_HELD_BY_LOWEST', broken: ({ lowest }, { ofSum }) => lowest < ofSum },
    always('LEVEL_NOT_NUMBER_ALONE'),
  ],
  sources: [iso13849],
  check: ({ rates }) => noLevelProblems('rates', rateOfSubsystems(rates)),
  compute: subsystems,
});
