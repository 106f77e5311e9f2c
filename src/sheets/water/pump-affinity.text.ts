import type { SheetText } from '../sheet-text.ts';
import { notes } from './notes.text.ts';

export const pumpAffinityText: SheetText = {
  en: {
    title: 'Affinity laws',
    about:
      'One point of a pump carried to another speed. The laws move the curve of the pump, not its operating point.',
    inputs: { flow: 'Flow', head: 'Head', power: 'Shaft power', speedRatio: 'New speed over old' },
    outputs: {
      flow: 'Flow at the new speed',
      head: 'Head at the new speed',
      power: 'Shaft power at the new speed',
    },
    notes: {
      AFFINITY_NOT_OPERATING_POINT:
        'This is where the point of the curve goes; with static head the operating point goes elsewhere.',
      PUMP_SPEED_FAR: notes.PUMP_SPEED_FAR,
    },
  },
};
