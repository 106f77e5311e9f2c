import type { SheetText } from '../sheet-text.ts';
import { notes } from './notes.text.ts';
import { directionWords, pistonNotes, pistonProblems, pistonWords } from './piston.text.ts';

export const leastPressureText: SheetText = {
  en: {
    title: 'Least pressure for a load',
    about:
      'Pressure at the cylinder at which its load ratio is the one wanted, and the one at which it stalls.',
    inputs: { ...pistonWords, loadRatio: 'Load ratio wanted' },
    outputs: {
      leastPressure: 'Least pressure at the cylinder',
      stallPressure: 'Pressure at which it stalls',
    },
    notes: {
      LOAD_RATIO_GUIDE:
        'Guide (memory): a load ratio of 0.5 for a load that moves at speed, 0.7 slow or held, 0.85 clamping.',
      VALVE_PILOT_PRESSURE: notes.VALVE_PILOT_PRESSURE,
      ...pistonNotes,
    },
    problems: pistonProblems,
    options: { direction: directionWords },
  },
};
