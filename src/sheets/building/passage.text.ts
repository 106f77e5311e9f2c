import type { SheetText } from '../sheet-text.ts';
import { notesOf } from './notes.text.ts';

export const passageText: SheetText = {
  en: {
    title: 'Passage through a door or corridor',
    about: 'What a section leaves of a straight opening in width and height, with gear and clearance.',
    inputs: {
      width: 'Width of the section, the way it travels',
      height: 'Height of the section',
      gearHeight: 'Height of the gear under it',
      openingWidth: 'Clear width of the opening',
      openingHeight: 'Clear height of the opening',
      clearance: 'Clearance wanted at each side and on top',
    },
    outputs: { widthMargin: 'Left in width', heightMargin: 'Left in height', answer: 'Answer' },
    options: {
      answer: {
        passes: 'passes',
        'too wide': 'too wide',
        'too high': 'too high',
        'too wide and too high': 'too wide and too high',
      },
    },
    notes: {
      ...notesOf('CAUTION_MOVING', 'GEAR_HEIGHT'),
      PASSAGE_SHORT:
        'It does not pass with that clearance: take off feet, guards or signal lamps, turn it, split it, or take out the door frame.',
      PASSAGE_CLEAR_SIZE:
        'Measure the clear size: door leaf open, handle, closer, frame, pipes, lamps and sprinkler heads take their share.',
    },
  },
};
