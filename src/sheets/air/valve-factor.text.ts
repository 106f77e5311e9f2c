import type { SheetText } from '../sheet-text.ts';

export const valveFactorText: SheetText = {
  en: {
    title: 'Factors of US valve sizing',
    about: 'Compression factor and pressure-drop factor of the usual tables, for sizing a valve by Cv.',
    inputs: { pressure: 'Pressure, psig', loss: 'Pressure lost in the valve, psi' },
    outputs: { compressionFactor: 'Compression factor', dropFactor: 'Pressure-drop factor' },
    notes: {
      VALVE_FACTOR_PRINTED:
        'Printed figures of two public documents; arithmetic gives the same within 1.2 %.',
    },
    problems: {
      VALVE_FACTOR_OFF:
        'The table has no factor for that loss at that pressure, and none is made up. It has: {allowed}.',
    },
    options: {
      pressure: { '40': '40', '60': '60', '80': '80', '90': '90', '100': '100' },
      loss: { '2': '2', '5': '5', '10': '10' },
    },
  },
};
