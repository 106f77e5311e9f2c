import type { SheetText } from '../sheet-text.ts';

export const meanDrawText: SheetText = {
  en: {
    title: 'Mean draw of the line',
    about: 'Liquid that the filler takes in the mean at a given rate: what a make-up must bring.',
    inputs: { rate: 'Rate', volume: 'Volume for each bottle, with what runs over' },
    outputs: { flow: 'Mean draw' },
    notes: {
      DRAW_PEAK_IS_HIGHER:
        'A mean over many fills. While lanes are open the flow is higher: size the run for that one.',
    },
  },
};
