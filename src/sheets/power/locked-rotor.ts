import { choiceField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { beyondTable } from '../table-problem.ts';
import { somePowers, voltages } from './bounds.ts';
import { always, caution } from './caution.ts';
import { horsepower } from './horsepower.ts';
import {
  type LockedRotorLetter,
  letters,
  lockedRotorLetters,
  lockedRotorTable,
} from './locked-rotor-letters.ts';

/**
 * Current of a standing motor at full voltage from its code letter, lowest and highest.
 *
 * Method   I = 1000 s P/(sqrt(3) U), s in kVA/hp at both ends of the letter
 * Symbols  P  power    scalar  W of the plate, taken in hp
 *          U  voltage  scalar  V line to line
 * Returns  A, lowest and highest; the highest undefined for V, which is open upwards
 * Cost     O(1)
 * Source   NEC table 430.7(B)
 */
export const lockedRotorCurrents = (
  power: number,
  voltage: number,
  letter: LockedRotorLetter,
): { readonly lowest: number; readonly highest: number | undefined } => {
  const [low, high] = lockedRotorLetters[letter];
  const current = (kilovoltamperes: number): number =>
    (1000 * kilovoltamperes * (power / horsepower)) / (Math.sqrt(3) * voltage);
  return { lowest: current(low), highest: high === undefined ? undefined : current(high) };
};

interface LockedRotorInputs {
  readonly power: number;
  readonly voltage: number;
  readonly letter: LockedRotorLetter;
}

export const lockedRotorSheet = defineSheet({
  id: 'power/locked-rotor',
  version: 1,
  inputs: {
    power: numberField('power', 'P', somePowers),
    voltage: numberField('voltage', 'U', voltages),
    letter: choiceField<LockedRotorLetter>('\\text{letter}', letters),
  },
  outputs: {
    lowest: numberField('current', 'I_{\\min}'),
    highest: numberField('current', 'I_{\\max}'),
  },
  formula: [
    'I_{LR} = \\frac{1000\\, s\\, P_{\\mathrm{hp}}}{\\sqrt{3}\\, U}, \\quad s_{\\min} \\le s \\le s_{\\max}',
  ],
  limits: [caution, always('LOCKED_ROTOR_TABLE')],
  sources: [lockedRotorTable],
  check: ({ letter }) => (letter === 'V' ? [beyondTable('letter', letter, 'U', lockedRotorTable)] : []),
  compute: (i: LockedRotorInputs) => {
    const { lowest, highest } = lockedRotorCurrents(i.power, i.voltage, i.letter);
    return { lowest, highest: highest! };
  },
});
