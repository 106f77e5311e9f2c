import type { SheetText } from '../sheet-text.ts';

export const closingColumnText: SheetText = {
  en: {
    title: 'Volume that a moving column presses through closing valves',
    about:
      'How much more passes while the lanes close than a straight closing counts, because the liquid in the run goes on pressing.',
    inputs: {
      inertia: 'Time constant of the run',
      closing: 'Closing time',
      jets: 'Part of the head left for the jets',
      flow: 'Flow with all lanes open',
    },
    outputs: { factor: 'Part of the open flow over the stroke', volume: 'Volume beyond a straight closing' },
    notes: {},
  },
};
