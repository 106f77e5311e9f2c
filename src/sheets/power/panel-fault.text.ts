import type { SheetText } from '../sheet-text.ts';
import { notesOf } from './notes.text.ts';

export const panelFaultText: SheetText = {
  en: {
    title: 'Fault current against the rating of a panel',
    about: 'Available fault current at a panel, with running motors, against its short-circuit rating.',
    inputs: {
      fault: 'Fault current from the supply',
      motors: 'Full-load currents of running motors, together',
      rating: 'Short-circuit rating of the panel',
    },
    outputs: { available: 'Available fault current', margin: 'Margin', share: 'Share of the rating' },
    notes: {
      ...notesOf('CAUTION_ELECTRICAL'),
      PANEL_WEAKEST_PART:
        'The rating of a panel is that of its weakest power component. Many panels are marked 5 kA where nothing else was worked out. The utility states the available current in writing, with a date.',
      PANEL_RATING_EXCEEDED:
        'The available current is over the rating: the panel may not be connected here as it is. What helps: a transformer or reactor ahead, current-limiting fuses that the panel’s rating is listed with, a longer run, components of a higher rating.',
    },
  },
};
