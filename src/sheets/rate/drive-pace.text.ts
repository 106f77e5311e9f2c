import type { SheetText } from '../sheet-text.ts';

export const drivePaceText: SheetText = {
  en: {
    title: 'Pace of a drive on another frequency',
    about:
      'Share by which a drive that runs straight on the supply stretches its times on another frequency.',
    inputs: { rated: 'Frequency of the plate', here: 'Frequency of the floor' },
    outputs: { stretch: 'Times here over those of the plate' },
    notes: {
      PACE_FAR:
        'Far from the frequency of the plate: what the motor can still pull, and what the machine bears, is a question of its own.',
    },
  },
};
