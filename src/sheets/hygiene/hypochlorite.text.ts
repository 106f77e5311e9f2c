import type { SheetText } from '../sheet-text.ts';
import { notesOf } from './notes.text.ts';

export const hypochloriteText: SheetText = {
  en: {
    title: 'Strength of hypochlorite',
    about:
      'The three percentages that a drum of sodium hypochlorite may carry, and its grams of chlorine in a litre.',
    inputs: { which: 'Percentage on the drum', percent: 'Percentage', density: 'Density' },
    outputs: {
      chlorine: 'Available chlorine',
      trade: 'Trade per cent, by volume',
      byWeight: 'Available chlorine by weight',
      hypochlorite: 'Sodium hypochlorite by weight',
    },
    notes: {
      ...notesOf('HYPOCHLORITE_WHICH_PERCENT', 'CAUTION_CHEMICAL'),
      HYPOCHLORITE_AGES:
        'Hypochlorite loses strength in a warm store: titrate each delivery (common practice).',
    },
    options: {
      which: {
        trade: 'trade per cent (grams of available chlorine in 100 mL)',
        'available chlorine': 'available chlorine by weight',
        'sodium hypochlorite': 'sodium hypochlorite by weight',
      },
    },
  },
};
