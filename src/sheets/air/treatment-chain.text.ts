import type { SheetText } from '../sheet-text.ts';
import { classWords, purityNotes } from './purity.text.ts';

const asked = { '-': 'not specified', ...classWords } as const;
const given = { '?': 'not known', ...classWords } as const;
const answer = { met: 'met', 'not met': 'not met', unknown: 'not known' } as const;

export const treatmentChainText: SheetText = {
  en: {
    title: 'Purity asked against the treatment chain',
    about:
      'The designation [particles:water:oil] of ISO 8573-1 that the line asks, against what compressor, dryer and filters give.',
    inputs: {
      particlesAsked: 'Particles asked',
      waterAsked: 'Water asked',
      oilAsked: 'Oil asked',
      compressor: 'Compressor',
      dryer: 'Dryer',
      dustFilter: 'Dust filter after the dryer',
      particlesGiven: 'Particles after the last filter',
      waterGiven: 'Water after the dryer',
      oilGiven: 'Oil after the last filter',
    },
    outputs: {
      particles: 'Particles',
      water: 'Water',
      oil: 'Oil',
      purity: 'Purity as a whole',
    },
    notes: {
      CHAIN_CLASS_ZERO: 'Class 0 is what user and supplier agree in writing: ask for the limits agreed.',
      CHAIN_OIL_FREE_INTAKE:
        'An oil-free compressor does not take out the oil vapour of its intake: class 1 still needs carbon in a polluted place.',
      CHAIN_OIL_FLOODED:
        'Oil-flooded: filters and carbon carry the class, and a soaked or torn element lets oil through to the machine.',
      CHAIN_DESICCANT_DUST: 'A desiccant dryer sheds dust: a particle filter must stand after it.',
      PURITY_SECOND_HAND: purityNotes.PURITY_SECOND_HAND,
    },
    problems: {
      CHAIN_DRYER_CLASS: 'That dryer cannot give water class {given}. Allowed: {allowed}.',
    },
    options: {
      particlesAsked: asked,
      waterAsked: asked,
      oilAsked: asked,
      compressor: { '?': 'not known', 'oil-free': 'oil-free', 'oil-flooded': 'oil-flooded' },
      dryer: {
        '?': 'not known',
        none: 'none',
        refrigerated: 'refrigerated',
        desiccant: 'desiccant',
        membrane: 'membrane',
      },
      dustFilter: { '?': 'not known', yes: 'yes', no: 'no' },
      particlesGiven: given,
      waterGiven: given,
      oilGiven: given,
      particles: answer,
      water: answer,
      oil: answer,
      purity: answer,
    },
  },
};
