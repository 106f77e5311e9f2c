import type { SheetText } from '../sheet-text.ts';
import { notes, problems } from './notes.text.ts';

export const fillingTimeText: SheetText = {
  en: {
    title: 'Time to fill a volume with air',
    about: 'Time in which a tank or a machine comes up to pressure through a valve or a chain.',
    inputs: {
      volume: 'Volume',
      conductance: 'Sonic conductance C',
      criticalRatio: 'Critical pressure ratio b',
      start: 'Pressure at the start',
      end: 'Pressure at the end',
      supply: 'Pressure of the supply',
      atmosphere: 'Atmospheric pressure',
      temperature: 'Temperature of the air',
    },
    outputs: { longest: 'Time, slow (isothermal)', shortest: 'Time, fast (adiabatic)' },
    notes: {
      FILL_BETWEEN: 'The real time lies between the two: the air warms as it is pressed together.',
      CAUTION_COMPRESSED_AIR: notes.CAUTION_COMPRESSED_AIR,
    },
    problems: {
      AIR_BELOW_VACUUM: problems.AIR_BELOW_VACUUM,
      FILL_OVER_SUPPLY: 'The pressure at the end is over the supply: it is never reached.',
      FILL_FALLS: 'The pressure at the start is over the one at the end: that is venting.',
    },
  },
};
