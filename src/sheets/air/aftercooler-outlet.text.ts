import type { SheetText } from '../sheet-text.ts';

export const aftercoolerOutletText: SheetText = {
  en: {
    title: 'Temperature behind the aftercooler',
    about: 'Temperature of the air that an aftercooler cooled by the air of the room lets out.',
    inputs: { room: 'Temperature of the room', approach: 'Approach of the aftercooler' },
    outputs: { temperature: 'Temperature behind it' },
    notes: {
      AFTERCOOLER_APPROACH:
        'The approach of an aftercooler to the room is 8 to 12 K where it is clean, common practice; cooled by water it comes nearer to the water.',
    },
  },
};
