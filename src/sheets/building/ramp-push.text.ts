import type { SheetText } from '../sheet-text.ts';
import { notesOf } from './notes.text.ts';

export const rampPushText: SheetText = {
  en: {
    title: 'Push on a ramp',
    about: 'Force along a ramp that rolls a section up, and that holds it back on the way down.',
    inputs: {
      mass: 'Mass of section and gear',
      slope: 'Rise over run of the ramp',
      rolling: 'Rolling resistance over weight',
    },
    outputs: {
      upForce: 'Force up the ramp',
      holdForce: 'Force that holds it back down the ramp',
      levelForce: 'Force on the level',
      angle: 'Angle of the ramp',
    },
    notes: {
      ...notesOf('CAUTION_MOVING'),
      RAMP_RUNS_AWAY: 'It runs away by itself: a winch or brake above it, never people below it.',
      RAMP_BY_HAND: 'Over 400 N: more than two people push for long (common practice). A winch or a tug.',
      RAMP_STARTING:
        'Starting, a threshold or a grain under a hard wheel take two to three times the rolling force (common practice).',
    },
  },
};
