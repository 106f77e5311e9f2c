import type { SheetText } from '../sheet-text.ts';
import { notesOf } from './notes.text.ts';

export const footLoadText: SheetText = {
  en: {
    title: 'Load under feet',
    about: 'Force and pressure of the feet of a machine on its floor, also when one of them hangs free.',
    inputs: {
      dryMass: 'Mass as delivered',
      waterMass: 'Full tanks',
      productMass: 'Wet product and bottles',
      feet: 'Feet',
      footDiameter: 'Diameter of a foot',
      allowed: 'Pressure that the floor stands, by the engineer’s word',
    },
    outputs: {
      mass: 'Mass in all',
      footForce: 'Force of a foot, all carrying',
      pressure: 'Pressure, all carrying',
      unevenForce: 'Force of a foot, one hanging free',
      unevenPressure: 'Pressure, one hanging free',
      plateDiameter: 'Plate that holds the pressure allowed',
    },
    notes: {
      ...notesOf('CAUTION_STRUCTURE', 'UNEVEN_FLOOR'),
      FOOT_OVER_ALLOWED: 'The pressure is over what is allowed here: larger plates, or more feet.',
      FOOT_DRY_ONLY:
        'Only the mass as delivered is given: full tanks, wet product and bottles press as well.',
      FOOT_ALLOWED_LOCAL:
        'Where no pressure is given 1 MPa is taken, far below sound concrete, to size a plate (common practice): screed, tiles, hollow floors and upper storeys stand much less.',
    },
    problems: { FEET_WHOLE: '{path}: "{given}" is not a whole number of feet.' },
  },
};
