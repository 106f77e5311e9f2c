import type { SheetText } from '../sheet-text.ts';
import { notesOf, problemsOf } from './notes.text.ts';

/** Words of the fields that describe a bath. */
export const bathWords = {
  volume: 'Water in the bath',
  start: 'Temperature at first',
  end: 'Temperature wanted',
  metalMass: 'Mass of tank, pipe and what else gets warm',
  metalHeat: 'Specific heat of that',
  loss: 'Heat lost by each kelvin over the room',
  ambient: 'Temperature of the room',
  efficiency: 'Share of the power that reaches the bath',
} as const;

export const heatUpTimeText: SheetText = {
  en: {
    title: 'Heat-up time of a bath',
    about: 'Time in which a heater brings a bath to its temperature, with its losses and without.',
    inputs: { ...bathWords, power: 'Power of the heater' },
    outputs: {
      time: 'Time',
      timeWithoutLoss: 'Time if nothing were lost',
      reached: 'Temperature reached in that time',
      ceiling: 'Highest temperature that this power holds, at most boiling',
      energy: 'Heat that stays in bath and steel',
      holdingPower: 'Power that holds the temperature wanted',
    },
    notes: {
      ...notesOf('CAUTION_HOT_WATER', 'HEAT_LOSSES_LEFT_OUT'),
      HEAT_NEVER_REACHED:
        'The temperature wanted is never reached: the losses take all the power before. The time told is to 95 % of the rise that this power can make.',
      HEAT_SLOW_AT_END:
        'Losses more than double the time: a cover or insulation may do more than a larger heater.',
    },
    problems: problemsOf('HEAT_NO_RISE'),
  },
};
