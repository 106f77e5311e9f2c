import type { SheetText } from '../sheet-text.ts';
import { notesOf } from './notes.text.ts';

export const tippingText: SheetText = {
  en: {
    title: 'Tipping of a section',
    about: 'Slope at which a section tips over its lower edge, and the level push that tips it.',
    inputs: {
      mass: 'Mass of the section',
      edgeDistance: 'Centre of mass to the edge over which it tips, level',
      height: 'Height of the centre of mass, gear included',
      slope: 'Rise over run of the path',
      pushHeight: 'Height at which somebody pushes',
    },
    outputs: {
      tipSlope: 'Slope at which it tips, rise over run',
      tipAngle: 'Angle at which it tips',
      slopeShare: 'Slope of the path over that',
      pushForce: 'Push that tips it on the level',
    },
    notes: {
      ...notesOf('CAUTION_MOVING'),
      TIPPING_FALLS: 'It tips over on this slope.',
      TIPPING_NEAR:
        'Over half of the slope at which it tips: a stop, a threshold or a wheel in a joint is enough.',
      TIPPING_DRAINED:
        'Weigh it to find the centre of mass, drained: liquid in a tank runs to the low side and moves it further.',
    },
  },
};
