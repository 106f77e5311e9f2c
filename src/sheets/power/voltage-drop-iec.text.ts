import type { SheetText } from '../sheet-text.ts';
import { notesOf } from './notes.text.ts';
import { dropCollapse } from './voltage-drop.text.ts';

export const voltageDropIecText: SheetText = {
  en: {
    title: 'Voltage drop by IEC 60364',
    about: 'Drop along a run by the formula of the IEC annex, where only section and metal are known.',
    inputs: {
      phases: 'Phases',
      voltage: 'Voltage, line to line',
      current: 'Current',
      length: 'Length, one way',
      area: 'Section',
      metal: 'Metal',
      powerFactor: 'Power factor of the load',
    },
    outputs: {
      toNeutral: 'Drop, line to neutral',
      share: 'Share of the voltage to neutral',
      lineToLine: 'Drop, line to line',
    },
    options: {
      phases: { 'three-phase': 'three-phase', 'single-phase': 'single-phase' },
      metal: { copper: 'copper', aluminium: 'aluminium' },
    },
    notes: {
      ...notesOf('CAUTION_ELECTRICAL', 'DROP_OVER_3', 'DROP_OVER_5'),
      DROP_IEC_TO_NEUTRAL:
        'Rule set: IEC 60364-5-52 annex G, informative. The drop of this formula is to neutral: its share is of the voltage to neutral, not of the line voltage. One copy prints the reactance divided by the section, a misprint.',
    },
    problems: dropCollapse,
  },
};
