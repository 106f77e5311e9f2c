import type { SheetText } from '../sheet-text.ts';
import { notesOf } from './notes.text.ts';
import { offCentreSlingText } from './off-centre-sling.text.ts';
import { slingLegText } from './sling-leg.text.ts';

const shared = slingLegText.en.notes;

export const slingPlanText: SheetText = {
  en: {
    title: 'Sling by its measures',
    about:
      'Legs from one hook over the centre of mass to points at both ends: their length, their angle and the pull in each.',
    inputs: {
      mass: 'Mass that hangs',
      legs: 'Legs',
      centreAlong: 'Centre of mass along, from the corner',
      centreAcross: 'Centre of mass across, from the corner',
      firstAlong: 'First points along, from the corner',
      apartAlong: 'Points apart, along',
      firstAcross: 'First points across, from the corner',
      apartAcross: 'Points apart, across',
      height: 'Hook above the lifting points',
      legCapacity: 'What a leg carries straight, by its plate',
    },
    outputs: {
      firstTension: 'Pull in the leg that carries the first end',
      secondTension: 'Pull in the leg that carries the second end',
      tensionMass: 'The harder one as a mass',
      firstLength: 'Length of a leg to the first points',
      secondLength: 'Length of a leg to the second points',
      angle: 'Angle of the flattest leg to the horizontal',
      legShare: 'The harder pull over what a leg carries',
    },
    options: { legs: { '2': 'two', '4': 'four' } },
    notes: {
      ...notesOf('CAUTION_LIFTING'),
      SLING_OVER_CAPACITY: shared.SLING_OVER_CAPACITY!,
      SLING_FLAT: shared.SLING_FLAT!,
      SLING_CORNERS:
        'A rigid load can hang on the two legs across its corners: one leg is counted for each end (memory).',
      SLING_STEEPER_PULLS: offCentreSlingText.en.notes.SLING_STEEPER_PULLS!,
      SLING_REDUCED: shared.SLING_REDUCED!,
    },
    problems: {
      SLING_POINTS_TOGETHER: '{path}: the lifting points are in one place. Allowed: {allowed}.',
      SLING_CENTRE_OUTSIDE:
        '{path}: the centre of mass lies beyond the lifting points: it would tip out of the sling. Allowed: {allowed}.',
      SLING_TOO_FLAT: slingLegText.en.problems!.SLING_TOO_FLAT!,
    },
  },
};
