import type { SheetText } from '../sheet-text.ts';
import { notesOf } from './notes.text.ts';
import { slingLegText } from './sling-leg.text.ts';

const shared = slingLegText.en.notes;

export const offCentreSlingText: SheetText = {
  en: {
    title: 'Sling with an off-centre mass',
    about: 'Pull in two legs of different angle that hold a mass under the hook.',
    inputs: {
      mass: 'Mass that hangs',
      firstAngle: 'Angle of the first leg from the vertical',
      secondAngle: 'Angle of the second leg from the vertical',
      legCapacity: 'What a leg carries straight, by its plate',
    },
    outputs: {
      firstTension: 'Pull in the first leg',
      secondTension: 'Pull in the second leg',
      legShare: 'The harder one over what a leg carries',
    },
    notes: {
      ...notesOf('CAUTION_LIFTING'),
      SLING_OVER_CAPACITY: shared.SLING_OVER_CAPACITY!,
      SLING_FLAT: shared.SLING_FLAT!,
      SLING_STEEPER_PULLS:
        'The steeper leg pulls harder. The hook must stand over the centre of mass, or the section swings until it does.',
    },
    problems: {
      SLING_LEGS_PARALLEL:
        '{path}: both legs hang straight down: how they share is not told by their angles. Allowed: {allowed}.',
    },
  },
};
