import type { SheetText } from '../sheet-text.ts';
import { notes } from './notes.text.ts';
import { directionWords, pistonNotes, pistonProblems, pistonWords } from './piston.text.ts';

export const pistonForceText: SheetText = {
  en: {
    title: 'Piston force and load ratio',
    about: 'Force of a cylinder at a pressure, what friction and spring leave of it, and how loaded it is.',
    inputs: { pressure: 'Pressure at the cylinder', ...pistonWords },
    outputs: {
      force: 'Force without friction',
      usableForce: 'Force that is left',
      loadRatio: 'Load ratio',
      stallPressure: 'Pressure at which it stalls',
    },
    notes: {
      LOAD_RATIO_STALL: notes.LOAD_RATIO_STALL,
      LOAD_RATIO_HIGH: notes.LOAD_RATIO_HIGH,
      ...pistonNotes,
    },
    problems: {
      ...pistonProblems,
      PISTON_NO_FORCE: 'Friction, spring and the pressure on the other side leave no force at all.',
    },
    options: { direction: directionWords },
  },
};
