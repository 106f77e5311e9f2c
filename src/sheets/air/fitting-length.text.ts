import type { SheetText } from '../sheet-text.ts';

export const fittingLengthText: SheetText = {
  en: {
    title: 'Equivalent length of air fittings',
    about: 'Length of straight pipe that loses what bends, elbows and tees of a nominal size lose.',
    inputs: {
      size: 'Nominal size',
      longBends: 'Long bends of 90 degrees',
      elbows: 'Elbows of 90 degrees',
      teeRuns: 'Tees, straight through',
      teeBranches: 'Tees, into the branch',
    },
    outputs: { length: 'Equivalent length' },
    notes: {
      FITTINGS_EMPIRICAL:
        'The table is empirical and does not say where it comes from; quick couplings, filters and valves are not in it and usually lose more.',
    },
    options: {
      size: {
        '15': 'DN 15',
        '20': 'DN 20',
        '25': 'DN 25',
        '32': 'DN 32',
        '40': 'DN 40',
        '50': 'DN 50',
        '65': 'DN 65',
        '80': 'DN 80',
        '100': 'DN 100',
        '125': 'DN 125',
      },
    },
  },
};
