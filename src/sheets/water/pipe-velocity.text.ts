import type { SheetText } from '../sheet-text.ts';

export const pipeVelocityText: SheetText = {
  en: {
    title: 'Pipe velocity',
    about: 'Mean velocity in a full round pipe.',
    inputs: { flow: 'Flow', bore: 'Bore' },
    outputs: { velocity: 'Velocity' },
    notes: {
      PIPE_VELOCITY_HIGH:
        'Over 2.44 m/s (8 ft/s): noise, wear and surge; a US plumbing code sets this as the highest in building pipes.',
    },
  },
};
