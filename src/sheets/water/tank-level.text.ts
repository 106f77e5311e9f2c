import type { SheetText } from '../sheet-text.ts';

export const tankLevelText: SheetText = {
  en: {
    title: 'Surface of a tank after a draw',
    about: 'How far a tank of straight walls falls when more is drawn than made up.',
    inputs: {
      surface: 'surface when full',
      drawn: 'drawn and not made up',
      area: 'plan area',
      outlet: 'height of the outlet',
    },
    outputs: { level: 'surface' },
    notes: {
      TANK_BELOW_OUTLET: 'The surface has reached the outlet: the tank gives no more than its make-up.',
    },
  },
};
