import type { SheetText } from '../sheet-text.ts';
import { notesOf } from './notes.text.ts';

export const bondResistanceText: SheetText = {
  en: {
    title: 'Bond across a split',
    about:
      'Resistance of a protective bond that was parted and made again, as measured against what its copper lets expect.',
    inputs: {
      length: 'Length between the points',
      area: 'Section of the conductor',
      temperature: 'Temperature of the conductor',
      contacts: 'Allowed to the contacts',
      leads: 'Leads of the meter',
      measured: 'Measured',
    },
    outputs: {
      conductor: 'Of the conductor',
      expected: 'Expected with contacts and leads',
      bond: 'Measured without the leads',
      share: 'Measured over expected',
    },
    notes: {
      ...notesOf('CAUTION_GUARDING'),
      BOND_OVER_EXPECTED:
        'More than expected: a loose or painted joint, a thinner or longer conductor, or no bond at all.',
      BOND_UNDER_CONDUCTOR:
        'Less than the copper alone: the frame or another cable carries beside it. Measure with the bond open as well.',
      BOND_OVER_US: 'Over 0.1 ohm, which NFPA 79 asks at most (memory).',
      BOND_TEST_CURRENT:
        'By 0.2 to 10 A from a source of 24 V at most that is parted from the supply; by a qualified person, isolated and locked.',
    },
  },
};
