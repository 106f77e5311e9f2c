import type { SheetText } from '../sheet-text.ts';
import { bathWords } from './heat-up-time.text.ts';
import { notesOf, problemsOf } from './notes.text.ts';

export const heatUpPowerText: SheetText = {
  en: {
    title: 'Power for a heat-up time',
    about: 'Power that brings a bath to its temperature in the time wanted, with its losses and without.',
    inputs: { ...bathWords, time: 'Time wanted' },
    outputs: {
      power: 'Power',
      powerWithoutLoss: 'Power if nothing were lost',
      energyTaken: 'Energy taken in that time',
    },
    notes: {
      ...notesOf('CAUTION_HOT_WATER', 'HEAT_LOSSES_LEFT_OUT'),
      HEATER_CURRENT_ELSEWHERE:
        'Electric heaters take this from the supply: the current stands in the sheet of the heater, at the voltage of the site.',
    },
    problems: problemsOf('HEAT_NO_RISE'),
  },
};
