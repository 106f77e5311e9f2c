import type { SheetText } from '../sheet-text.ts';

export const orificeText: SheetText = {
  en: {
    title: 'Orifice and free jet',
    about:
      'Flow through a hole under a head, and the speed of its jet. For a submerged hole the head is the difference of the levels.',
    inputs: {
      head: 'Head over the middle of the hole',
      bore: 'Diameter of the hole',
      dischargeCoefficient: 'Coefficient of discharge',
      velocityCoefficient: 'Coefficient of velocity',
    },
    outputs: { flow: 'Flow', jetVelocity: 'Speed of the jet' },
    notes: {
      ORIFICE_LOW_HEAD:
        'The head is less than the diameter of the hole: it differs over the hole, and the formula gives too much.',
    },
  },
};
