import type { SheetText } from '../sheet-text.ts';
import { notes } from './notes.text.ts';

export const leakStepsText: SheetText = {
  en: {
    title: 'Leak by a fall in several steps',
    about:
      'Times at which a closed system falls through several pressures: the loss between them, a straight line through the losses, and the leak at the working pressure.',
    inputs: {
      volume: 'Volume',
      times: 'Times',
      pressures: 'Pressures at these times',
      temperature: 'Temperature',
      workingPressure: 'Working pressure',
    },
    outputs: {
      losses: 'Loss between the readings',
      slope: 'Slope of the line',
      intercept: 'Loss of the line at no pressure',
      leak: 'Leak at the working pressure',
    },
    notes: {
      LEAK_STEPS_EXTRAPOLATED:
        'The working pressure lies outside the readings: the line is carried on to it.',
      LEAK_STEPS_RISE: 'Between two readings the pressure did not fall: air came in, or it warmed.',
      LEAK_STEPS_STEEP:
        'The line falls to nothing before the pressure does: some users (drains, regulators, nozzles) close on the way.',
      AIR_REFERENCE: notes.AIR_REFERENCE,
      CAUTION_COMPRESSED_AIR: notes.CAUTION_COMPRESSED_AIR,
    },
    problems: {
      LEAK_STEPS_TIMES: 'A time stands twice: each reading has its own.',
      LEAK_STEPS_FLAT: 'The readings have one mean pressure: no line goes through them.',
    },
  },
};
