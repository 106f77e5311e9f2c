import type { SheetText } from '../sheet-text.ts';
import { notes, problems } from './notes.text.ts';

export const leakDecayText: SheetText = {
  en: {
    title: 'Leak by the fall of pressure',
    about:
      'A closed volume loses pressure: its mean leak, and the leak at the first pressure. Wait after filling until the air has cooled.',
    inputs: {
      volume: 'Volume',
      before: 'Pressure before',
      after: 'Pressure after',
      atmosphere: 'Atmospheric pressure',
      temperatureBefore: 'Temperature before',
      temperatureAfter: 'Temperature after',
      time: 'Time',
    },
    outputs: {
      meanLeak: 'Mean leak',
      factor: 'Leak at the first pressure over the mean',
      leakBefore: 'Leak at the first pressure',
      byRule: 'The same by the usual factor of 1.25',
    },
    notes: {
      LEAK_GAINED:
        'The air got warmer than the leak let it fall: it seems to gain. Measure the temperatures.',
      LEAK_TEMPERATURE:
        'A fall under a tenth of the pressure: 2 K that the air cools can double the figure; fall further or wait longer.',
      LEAK_RULE:
        'Leaks through holes fall with the pressure: the factor is {factor} here. The usual 1.25 belongs to a fall to about half; distributors use 1.0, 1.12 and 1.25 for 10, 20 and 50 psi. Users that close as the pressure falls make it steeper.',
      AIR_REFERENCE: notes.AIR_REFERENCE,
      CAUTION_COMPRESSED_AIR: notes.CAUTION_COMPRESSED_AIR,
    },
    problems: {
      AIR_BELOW_VACUUM: problems.AIR_BELOW_VACUUM,
      LEAK_NO_FALL:
        'The pressure after is not below the pressure before: nothing leaked that could be measured.',
    },
  },
};
