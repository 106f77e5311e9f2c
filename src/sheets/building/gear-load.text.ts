import type { SheetText } from '../sheet-text.ts';
import { notesOf } from './notes.text.ts';

export const gearLoadText: SheetText = {
  en: {
    title: 'Load of transport gear',
    about: 'Force and pressure of the wheels of skates, dollies or a pallet truck under a section.',
    inputs: {
      mass: 'Mass of the section, drained',
      gearMass: 'Mass of the gear',
      wheels: 'Wheels in all',
      carryingWheels: 'Wheels that carry on an uneven floor',
      contactLength: 'Length on which a wheel touches',
      contactWidth: 'Width of a wheel',
      wheelCapacity: 'What a wheel may carry, by its maker',
    },
    outputs: {
      wheelForce: 'Force of a wheel, all carrying',
      hardestForce: 'Force of a wheel, uneven',
      pressure: 'Pressure under it',
      wheelShare: 'Over what a wheel may carry',
    },
    notes: {
      ...notesOf('CAUTION_STRUCTURE', 'CAUTION_MOVING'),
      GEAR_OVER_CAPACITY: 'A wheel carries more than its maker allows: more wheels or larger ones.',
      GEAR_ALL_CARRY:
        'All wheels are said to carry. On a floor that is not flat one skate of four hangs free: take three quarters of them.',
      GEAR_JOINTS:
        'Small hard wheels break tiles, joint edges, covers of pits and thresholds: lay plates, ask what lies below the path.',
    },
    problems: {
      WHEELS_WHOLE: '{path}: "{given}" is not a whole number of wheels.',
      WHEELS_CARRYING: '{path}: more wheels carry than there are. Allowed: {allowed}.',
    },
  },
};
