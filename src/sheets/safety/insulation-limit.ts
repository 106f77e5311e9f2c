import { choiceField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { always, guardingCaution } from './caution.ts';

/** Ohm: IEC 60204-1:2016 18.3, NFPA 79 18.3 alike (memory). */
const conductors = 1e6;
/** Ohm: bus bars, conductor wires, collectors and slip rings of the same clause (memory). */
const collectors = 5e4;

export type InsulatedPart = 'conductors' | 'collectors';

interface InsulationInputs {
  readonly part: InsulatedPart;
  readonly voltage: number;
}

/**
 * Least insulation resistance from a power circuit to the protective conductor.
 *
 * Method   R = 1 Mohm of conductors, 50 kohm of collectors;  I = U/R flows at the limit
 * Symbols  U  voltage  scalar  V DC of the test
 * Returns  least ohm; current of the tester at the limit, A
 * Assumes  electronics that do not take the voltage are disconnected, supply isolated and locked
 * Cost     O(1)
 * Source   IEC 60204-1:2016 18.3, memory; Ohm's law
 */
export const insulationLimit = ({ part, voltage }: InsulationInputs) => {
  const least = part === 'collectors' ? collectors : conductors;
  return { least, current: voltage / least };
};

export const insulationLimitSheet = defineSheet({
  id: 'safety/insulation-limit',
  version: 1,
  inputs: {
    part: choiceField<InsulatedPart>('\\text{part}', ['conductors', 'collectors'], 'conductors'),
    voltage: numberField('voltage', 'U', { least: 100, most: 1000, assumed: 500 }),
  },
  outputs: { least: numberField('resistance', 'R_{\\min}'), current: numberField('current', 'I') },
  formula: [
    'R_{\\min} = 1\\ \\mathrm{M\\Omega} \\text{ (conductors)}, \\quad 50\\ \\mathrm{k\\Omega} \\text{ (collectors)}, \\quad I = \\frac{U}{R_{\\min}}',
  ],
  limits: [
    guardingCaution,
    always('INSULATION_MEMORY'),
    always('INSULATION_DISCONNECT'),
    { code: 'INSULATION_VOLTAGE', broken: ({ voltage }) => voltage !== 500 },
  ],
  sources: [{ title: 'IEC 60204-1', edition: '2016', place: '18.3, 500 V DC', mark: 'memory' }],
  compute: insulationLimit,
});
