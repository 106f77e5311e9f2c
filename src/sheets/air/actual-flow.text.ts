import type { SheetText } from '../sheet-text.ts';
import { notes, problems } from './notes.text.ts';

export const actualFlowText: SheetText = {
  en: {
    title: 'Air at its own pressure, and its velocity',
    about: 'Volume that a flow of free air takes in a pipe, and how fast it moves there.',
    inputs: {
      flow: 'Free air',
      pressure: 'Pressure in the pipe',
      atmosphere: 'Atmospheric pressure',
      temperature: 'Temperature in the pipe',
      bore: 'Bore',
    },
    outputs: { actualFlow: 'Flow in the pipe', velocity: 'Velocity' },
    notes: { AIR_REFERENCE: notes.AIR_REFERENCE, AIR_VELOCITY_HIGH: notes.AIR_VELOCITY_HIGH },
    problems: { AIR_BELOW_VACUUM: problems.AIR_BELOW_VACUUM },
  },
};
