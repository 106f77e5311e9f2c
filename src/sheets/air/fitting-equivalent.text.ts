import type { SheetText } from '../sheet-text.ts';

export const fittingEquivalentText: SheetText = {
  en: {
    title: 'Equivalent length of a loss coefficient',
    about:
      'Length of straight pipe that loses what fittings lose whose loss coefficient is known, for the loss of the whole pipe.',
    inputs: {
      coefficient: 'Sum of the loss coefficients K',
      bore: 'Bore of the pipe',
      frictionFactor: 'Friction factor (Darcy)',
    },
    outputs: { length: 'Equivalent length' },
    notes: {
      FITTING_FRICTION_FACTOR:
        'The length holds for one friction factor: 0.02 is usual for turbulent air in small pipes (common practice); the loss of the pipe itself shows its own. Coefficients stand in the velocity of this bore.',
    },
  },
};
