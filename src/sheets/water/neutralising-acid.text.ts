import { causticPhText } from '../hygiene/caustic-ph.text.ts';
import { notesOf } from '../hygiene/notes.text.ts';
import type { SheetText } from '../sheet-text.ts';

export const neutralisingAcidText: SheetText = {
  en: {
    title: 'Acid that neutralises a caustic bath',
    about: 'Acid for the free caustic of a bath before it is drained, and its pH as it stands.',
    inputs: {
      volume: 'Bath',
      caustic: 'Free sodium hydroxide, by titration',
      acid: 'Acid',
      strength: 'Strength of the acid as delivered, by weight',
    },
    outputs: {
      causticMass: 'Sodium hydroxide in the bath',
      pureAcid: 'Pure acid',
      product: 'Acid as delivered',
      acidity: 'pH of the bath, without a buffer',
      wasteConcentration: 'Sodium hydroxide that has pH 12.5',
    },
    options: {
      acid: {
        sulfuric: 'sulfuric acid',
        hydrochloric: 'hydrochloric acid',
        phosphoric: 'phosphoric acid',
        citric: 'citric acid, anhydrous',
        'carbon dioxide': 'carbon dioxide, to bicarbonate',
      },
    },
    notes: {
      ...notesOf('CAUTION_CHEMICAL'),
      CAUSTIC_WASTE: causticPhText.en.notes.CAUSTIC_WASTE!,
      ACID_NO_CHLORINE:
        'Never neutralise while hypochlorite may be in the bath, drain or hose: acid sets chlorine gas free.',
      ACID_HEAT:
        'At this strength the bath heats up and may spit: thin it first, acid slowly into the bath, stirred.',
      ACID_TITRATE:
        'An old bath holds carbonate and takes more; the last tenth is set by the meter, not by this figure. Too much acid is no better than caustic.',
    },
  },
};
