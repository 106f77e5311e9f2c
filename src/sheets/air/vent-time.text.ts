import type { SheetText } from '../sheet-text.ts';
import { notes, problems } from './notes.text.ts';

export const ventTimeText: SheetText = {
  en: {
    title: 'Time to vent a volume',
    about: 'Time in which a tank or a machine loses its pressure through a dump valve with its silencer.',
    inputs: {
      volume: 'Volume',
      conductance: 'Sonic conductance C, silencer counted',
      criticalRatio: 'Critical pressure ratio b',
      start: 'Pressure at the start',
      end: 'Pressure at the end',
      atmosphere: 'Atmospheric pressure',
      temperature: 'Temperature of the air',
    },
    outputs: { longest: 'Time, slow (isothermal)', shortest: 'Time, fast (adiabatic)' },
    notes: {
      VENT_NOT_PROOF:
        'A time proves nothing: a gauge at the machine does. Volumes behind check valves, as loads that are held up, stay under pressure after the dump valve has opened.',
      CAUTION_COMPRESSED_AIR: notes.CAUTION_COMPRESSED_AIR,
    },
    problems: {
      AIR_BELOW_VACUUM: problems.AIR_BELOW_VACUUM,
      VENT_RISES: 'The pressure at the end is over the one at the start: that is filling.',
    },
  },
};
