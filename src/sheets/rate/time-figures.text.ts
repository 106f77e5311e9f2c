import type { SheetText } from '../sheet-text.ts';

export const timeFiguresText: SheetText = {
  en: {
    title: 'Availability, effectiveness and quality of a run',
    about:
      'Which share of the planned time the line ran, how near it came to its planned time of a bottle while it ran, which share was good, and all three together.',
    inputs: {
      planned: 'Planned time',
      running: 'Time that it ran',
      perBottle: 'Planned time of a bottle',
      made: 'Bottles made',
      good: 'Good bottles of them',
    },
    outputs: {
      availability: 'Availability',
      effectiveness: 'Effectiveness',
      quality: 'Quality',
      product: 'All three together',
    },
    notes: {
      EFFECTIVENESS_OVER_ONE:
        'It ran faster than planned: the planned time of a bottle is too long, or time that it ran is missing.',
    },
    problems: {
      RUN_OVER_PLANNED: '{path}: "{given}" is longer than the planned time. Accepted: {allowed}.',
      GOOD_OVER_MADE: '{path}: {given} good bottles are more than were made. Accepted: {allowed}.',
    },
  },
};
