import type { SheetText } from '../sheet-text.ts';
import { classWords, purityNotes } from './purity.text.ts';

export const particleClassText: SheetText = {
  en: {
    title: 'Purity class of particles',
    about: 'Class of ISO 8573-1 that measured particles meet.',
    inputs: {
      small: 'Particles of 0.1 to 0.5 um',
      medium: 'Particles of 0.5 to 1 um',
      large: 'Particles of 1 to 5 um',
      over5: 'Particles over 5 um found',
      mass: 'Mass of particles (0 where not measured)',
    },
    outputs: { particleClass: 'Class of particles' },
    notes: purityNotes,
    problems: {
      PARTICLE_MASS_MISSING: 'Particles this many or this large are classed by their mass, which is missing.',
    },
    options: { over5: { no: 'no', yes: 'yes' }, particleClass: classWords },
  },
};
