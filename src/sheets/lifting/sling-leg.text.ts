import type { SheetText } from '../sheet-text.ts';
import { notesOf } from './notes.text.ts';

export const slingLegText: SheetText = {
  en: {
    title: 'Pull in a sling leg',
    about: 'Pull in each leg of a sling with its mass under the hook, against what the leg carries.',
    inputs: {
      mass: 'Mass that hangs',
      legs: 'Legs',
      counted: 'Of three or four legs are counted',
      angle: 'Angle of a leg',
      angleFrom: 'Angle measured from the',
      legCapacity: 'What a leg carries straight, by its plate',
    },
    outputs: {
      tension: 'Pull in a leg',
      tensionMass: 'The same as a mass',
      factor: 'Factor of the angle',
      legShare: 'Over what a leg carries',
    },
    options: {
      legs: { '1': 'one', '2': 'two', '3': 'three', '4': 'four' },
      counted: {
        'two of them': 'two: lengths not known',
        'three of them': 'three: lengths known, or made equal',
      },
      angleFrom: { horizontal: 'horizontal', vertical: 'vertical' },
    },
    notes: {
      ...notesOf('CAUTION_LIFTING'),
      SLING_OVER_CAPACITY: 'A leg is pulled harder than its plate allows.',
      SLING_FLAT:
        'Flatter than 30° to the horizontal (60° from the vertical): not done; use longer legs or a beam.',
      SLING_RIGID:
        'A rigid load hangs on two or three of its legs, whichever are shortest: two are counted unless lengths are known (memory).',
      SLING_ANGLE_WORDS:
        'US charts give the angle to the horizontal, EN 13414 to the vertical: 30° means opposite things. Say which.',
      SLING_REDUCED:
        'Choking, sharp edges, chemicals and heat take more from a leg; plates of multi-leg slings may already count the angle.',
    },
    problems: { SLING_TOO_FLAT: '{path}: flatter than any sling is used. Allowed: {allowed}.' },
  },
};
