import type { SheetText } from '../sheet-text.ts';
import { notesOf } from './notes.text.ts';

export const dropCollapse = {
  DROP_COLLAPSE:
    '{path}: {given} would leave no voltage at the load; the run cannot carry it ({allowed} to lose).',
} as const;

export const voltageDropText: SheetText = {
  en: {
    title: 'Voltage drop along a run',
    about: 'Drop from the source to the load, by the usual formula and exactly.',
    inputs: {
      phases: 'Phases',
      voltage: 'Voltage at the source',
      current: 'Current',
      length: 'Length, one way',
      resistance: 'Resistance of a conductor, warm',
      reactance: 'Reactance of a conductor',
      powerFactor: 'Power factor of the load',
      parallel: 'Conductors in parallel',
    },
    outputs: {
      drop: 'Drop, usual formula',
      share: 'Drop as a share of the voltage',
      exactDrop: 'Drop, exact',
      loadVoltage: 'Voltage at the load',
    },
    options: { phases: { 'three-phase': 'three-phase', 'single-phase': 'single-phase' } },
    notes: {
      ...notesOf('CAUTION_ELECTRICAL', 'DROP_OVER_3', 'DROP_OVER_5'),
      DROP_APPROXIMATE: 'Over 10 %: the usual formula drifts, take the exact drop.',
      DROP_WARM_CONDUCTOR:
        'Resistance at the temperature of the running conductor (75 °C US, 70 °C PVC), not at 20 °C. The limits are advice: 3 % and 5 % by the NEC notes; 3 % for lighting and 5 % for other use by IEC 60364.',
    },
    problems: dropCollapse,
  },
};
