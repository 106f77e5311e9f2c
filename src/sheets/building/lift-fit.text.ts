import type { SheetText } from '../sheet-text.ts';
import { notesOf } from './notes.text.ts';

export const liftFitText: SheetText = {
  en: {
    title: 'Fit into a lift',
    about: 'Mass and size of a section with its gear against the plate, the car and the door of a lift.',
    inputs: {
      mass: 'Mass of the section, drained',
      gearMass: 'Mass of the gear',
      people: 'People who ride along',
      length: 'Length of the section',
      width: 'Width of the section',
      height: 'Height of the section',
      gearHeight: 'Height of the gear under it',
      capacity: 'Mass on the plate of the lift',
      carDepth: 'Depth of the car',
      carWidth: 'Width of the car',
      carHeight: 'Height of the car',
      doorWidth: 'Clear width of the door',
      doorHeight: 'Clear height of the door',
      clearance: 'Clearance wanted',
    },
    outputs: {
      load: 'Mass in the car',
      loadShare: 'Over what the plate allows',
      depthMargin: 'Left in depth',
      widthMargin: 'Left in width',
      heightMargin: 'Left in height',
      answer: 'Answer',
    },
    options: {
      answer: {
        fits: 'fits',
        'too large': 'too large',
        'too heavy': 'too heavy',
        'too large and too heavy': 'too large and too heavy',
      },
    },
    notes: {
      ...notesOf('CAUTION_MOVING', 'CAUTION_STRUCTURE', 'GEAR_HEIGHT'),
      LIFT_NO:
        'It does not fit: split it, take off what comes off, use another lift, or a crane from outside.',
      LIFT_SILL:
        'A wheel on the sill carries much of the mass at one point: ask the lift’s keeper how it may be loaded, and whether goods with trucks are allowed.',
      LIFT_PERSON_MEMORY: '75 kg a person is from memory.',
    },
  },
};
