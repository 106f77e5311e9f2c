import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { always, guardingCaution } from './caution.ts';

/** Ohm m of annealed copper at 20 degC, and its rise by kelvin: IEC 60028, memory; the reference gives 0.01724 ohm mm2/m. */
const copper = 1.724e-8;
const perKelvin = 0.00393;
const coldTemperature = 293.15;
/** Ohm: what NFPA 79 asks of a bond at most (memory). */
const usMost = 0.1;

/**
 * Resistance of a copper conductor.
 *
 * Method   R = rho L/A (1 + 0.00393 (t - 20))
 * Symbols  L  length       scalar  m
 *          A  area         scalar  m2
 *          t  temperature  scalar  K of the conductor
 * Returns  ohm
 * Cost     O(1)
 * Source   IEC 60028; Ohm's law
 */
export const copperResistance = (length: number, area: number, temperature: number): number =>
  ((copper * length) / area) * (1 + perKelvin * (temperature - coldTemperature));

interface BondInputs {
  readonly length: number;
  readonly area: number;
  readonly temperature: number;
  readonly contacts: number;
  readonly leads: number;
  readonly measured: number;
}

/**
 * A bond across a split, as measured against what its conductor lets expect.
 *
 * Method   R_e = R + R_c + R_l;  s = R_m/R_e
 * Symbols  R    conductor  as above
 *          R_c  contacts   scalar  ohm  allowed to the joints
 *          R_l  leads      scalar  ohm  of the meter; 0 where it takes them off
 *          R_m  measured   scalar  ohm
 * Returns  conductor and expected ohm, the bond without the leads, measured over expected
 * Cost     O(1)
 * Source   IEC 60204-1:2016 18.2.2, verification by expected value, memory
 */
export const bondResistance = ({ length, area, temperature, contacts, leads, measured }: BondInputs) => {
  const conductor = copperResistance(length, area, temperature);
  const expected = conductor + contacts + leads;
  return { conductor, expected, bond: measured - leads, share: measured / expected };
};

const resistances = { least: 0, most: 10 } as const;

export const bondResistanceSheet = defineSheet({
  id: 'safety/bond-resistance',
  version: 1,
  inputs: {
    length: numberField('length', 'L', { least: 0.01, most: 1000 }),
    area: numberField('conductorArea', 'A', { least: 5e-7, most: 1e-3 }),
    temperature: numberField('temperature', 't', { least: 233.15, most: 363.15, assumed: coldTemperature }),
    contacts: numberField('resistance', 'R_c', resistances),
    leads: numberField('resistance', 'R_l', resistances),
    measured: numberField('resistance', 'R_m', { least: 0, most: 1e6 }),
  },
  outputs: {
    conductor: numberField('resistance', 'R'),
    expected: numberField('resistance', 'R_e'),
    bond: numberField('resistance', 'R_m - R_l'),
    share: numberField('ratio', 's'),
  },
  formula: [
    'R = \\frac{\\rho L}{A} \\left( 1 + 0.00393\\, (t - 20\\,^{\\circ}\\mathrm{C}) \\right), \\quad R_e = R + R_c + R_l, \\quad s = \\frac{R_m}{R_e}',
  ],
  limits: [
    guardingCaution,
    { code: 'BOND_OVER_EXPECTED', broken: (_, { share }) => share > 1 + 1e-9 },
    { code: 'BOND_UNDER_CONDUCTOR', broken: (_, { bond, conductor }) => bond < conductor * (1 - 1e-9) },
    { code: 'BOND_OVER_US', broken: (_, { bond }) => bond > usMost * (1 + 1e-9) },
    always('BOND_TEST_CURRENT'),
  ],
  sources: [
    { title: 'IEC 60204-1', edition: '2016', place: '18.2.2', mark: 'memory' },
    {
      title: 'test-instrument manual on EN 60204-1',
      place: 'bonding: 0.2 to 10 A, range expected',
      mark: 'read',
    },
  ],
  compute: bondResistance,
});
