import type { SheetText } from '../sheet-text.ts';

export const tieInPressureText: SheetText = {
  en: {
    title: 'Pressure at a tie-in point',
    about: 'Pressure of a source at the height of a tie-in point, behind what is lost on the way.',
    inputs: {
      pressure: 'Pressure of the source',
      density: 'Density',
      from: 'Height where that pressure holds',
      to: 'Height of the tie-in over the floor under the line',
      stands: 'Height of that floor',
      loss: 'Loss on the way',
    },
    outputs: { left: 'Pressure at the tie-in' },
    notes: {
      TIE_IN_BELOW_ATMOSPHERE:
        'Less than the air outside: water would be drawn back, which backflow protection is there for.',
    },
  },
};
