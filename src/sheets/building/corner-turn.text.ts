import type { SheetText } from '../sheet-text.ts';
import { notesOf } from './notes.text.ts';

export const cornerTurnText: SheetText = {
  en: {
    title: 'Turn round a corner',
    about: 'Whether a section gets round the right-angled corner of two corridors, standing on its gear.',
    inputs: {
      length: 'Length of the section, with handles of the gear',
      width: 'Width of the section',
      first: 'Clear width of the one corridor',
      second: 'Clear width of the other',
      clearance: 'Clearance wanted all round',
    },
    outputs: { longest: 'Longest that gets round at this width', margin: 'Left', answer: 'Answer' },
    options: {
      answer: {
        turns: 'gets round by turning',
        sideways: 'gets round only sideways, without turning',
        'does not pass': 'does not get round',
      },
    },
    notes: {
      ...notesOf('CAUTION_MOVING'),
      CORNER_BLOCKED: 'It does not get round: split it, stand it on end, or take another way.',
      CORNER_SIDEWAYS:
        'It gets round only by moving sideways into one corridor: gear that rolls in every direction is needed.',
      CORNER_TOO_WIDE: 'It is wider than a corridor with its clearance.',
      CORNER_LEVEL:
        'A level floor, a square corner and straight walls are taken. Pillars, door frames near the corner and the drawbar of a truck take more.',
    },
  },
};
