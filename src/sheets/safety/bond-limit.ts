import { choiceField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { copperResistance } from './bond-resistance.ts';
import { always, guardingCaution } from './caution.ts';

/** Ohm of NFPA 79 at most, whatever the length (memory). */
const usMost = 0.1;
/** Ohm that two clean bolted contacts may add to the copper, common practice. */
const usualContacts = 0.01;
/** K: copper as cold as a hall usually is when a line is put up. */
const usualTemperature = 293.15;

export type BondRule = 'iec-60204-1' | 'nfpa-79';

interface BondLimitInputs {
  readonly rule: BondRule;
  readonly length: number;
  readonly area: number;
  readonly temperature: number;
  readonly contacts: number;
}

/**
 * The most that a bond may have between its ends, leads of the meter taken off.
 *
 * Method   IEC: R + R_c;  NFPA 79: the less of that and 0.1 ohm;  R as in bond-resistance
 * Symbols  R    conductor  ohm of its copper
 *          R_c  contacts   scalar  ohm  allowed to the two joints
 * Returns  conductor and most, ohm
 * Assumes  copper, one conductor, nothing beside it that carries
 * Cost     O(1)
 * Source   IEC 60204-1:2016 18.2.2 asks for a value as the conductor lets expect, NFPA 79 18.2 for 0.1 ohm; memory
 */
export const bondLimit = ({ rule, length, area, temperature, contacts }: BondLimitInputs) => {
  const conductor = copperResistance(length, area, temperature);
  const expected = conductor + contacts;
  return { conductor, most: rule === 'nfpa-79' ? Math.min(usMost, expected) : expected };
};

export const bondLimitSheet = defineSheet({
  id: 'safety/bond-limit',
  version: 1,
  inputs: {
    rule: choiceField<BondRule>('\\text{rule}', ['iec-60204-1', 'nfpa-79']),
    length: numberField('length', 'L', { least: 0.01, most: 1000 }),
    area: numberField('conductorArea', 'A', { least: 5e-7, most: 1e-3 }),
    temperature: numberField('temperature', 't', { least: 233.15, most: 363.15, assumed: usualTemperature }),
    contacts: numberField('resistance', 'R_c', { least: 0, most: 10, assumed: usualContacts }),
  },
  outputs: { conductor: numberField('resistance', 'R'), most: numberField('resistance', 'R_{\\max}') },
  formula: [
    'R = \\frac{\\rho L}{A} \\left( 1 + 0.00393\\, (t - 20\\,^{\\circ}\\mathrm{C}) \\right), \\quad R_{\\max} = R + R_c',
    'R_{\\max} = \\min(R + R_c,\\, 0.1\\ \\Omega) \\text{ (NFPA 79)}',
  ],
  limits: [
    guardingCaution,
    always('BOND_TEST_CURRENT'),
    {
      code: 'BOND_LONG_FOR_US',
      broken: ({ rule, length, area, temperature }) =>
        rule === 'nfpa-79' && copperResistance(length, area, temperature) >= usMost,
    },
  ],
  sources: [
    { title: 'IEC 60204-1', edition: '2016', place: '18.2.2', mark: 'memory' },
    { title: 'NFPA 79', edition: '2018', place: '18.2, 0.1 ohm', mark: 'memory' },
  ],
  compute: bondLimit,
});
