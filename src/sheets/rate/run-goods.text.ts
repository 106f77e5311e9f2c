import type { SheetText } from '../sheet-text.ts';

export const runGoodsText: SheetText = {
  en: {
    title: 'What a run uses up',
    about: 'Bottles, as many caps, and detergent that must be at hand before a run begins.',
    inputs: {
      rate: 'Bottles in an hour',
      duration: 'Length of the run',
      spare: 'To spare',
      bath: 'Detergent bath',
      concentration: 'Strength of the bath',
      carry: 'Carried out by a bottle',
    },
    outputs: { bottles: 'Bottles, and as many caps', detergent: 'Detergent' },
    notes: { GOODS_NO_SPARE: 'Nothing for what breaks, is rejected or is taken out to be looked at.' },
  },
};
