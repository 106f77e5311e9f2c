import type { SheetText } from '../sheet-text.ts';
import { notes } from './notes.text.ts';

export const pumpedSupplyText: SheetText = {
  en: {
    title: 'Pumped supply',
    about: "Pressure behind a pump at the floor's frequency, and behind its regulator.",
    inputs: {
      flows: 'Flows of the curve',
      heads: 'Heads of the curve',
      ratedFrequency: 'Frequency of the curve',
      frequency: 'Frequency on this floor',
      suctionHeight: 'Surface drawn from over the point',
      regulatorPressure: 'Set pressure of the regulator, 0 for none',
      density: 'Density',
      flow: 'Flow',
    },
    outputs: {
      speedRatio: 'Speed ratio',
      head: 'Head of the pump',
      pressure: 'Pressure',
      residual: 'Head missed at the points (rms)',
    },
    notes: {
      PUMP_SPEED_FAR: notes.PUMP_SPEED_FAR,
      PUMP_RUN_OUT: notes.PUMP_RUN_OUT,
      PUMP_EXTRAPOLATED: 'More flow than the last point of the curve, carried to this speed: extrapolated.',
      PUMP_REGULATED: 'The regulator sets the pressure, not the pump.',
      PRESSURE_CAUTION: notes.PRESSURE_CAUTION,
    },
  },
};
