import type { SheetText } from '../sheet-text.ts';

export const beltTensionText: SheetText = {
  en: {
    title: 'Belt tension',
    about:
      'Tension of a drive belt from the note of its plucked span, after a belt was taken off and put on again.',
    inputs: { linearDensity: 'Mass of the belt by length', span: 'Free span', frequency: 'Note of the span' },
    outputs: { tension: 'Tension of the span', deflection: 'Deflection for the force of a belt table' },
    notes: {
      BELT_STANDING: 'Plucked with the drive locked off and standing.',
      BELT_AGAIN: 'Read again after a day of running: a new belt settles. A slack one slips and costs rate.',
    },
  },
};
