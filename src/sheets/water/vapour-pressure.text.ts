import type { SheetText } from '../sheet-text.ts';

export const vapourPressureText: SheetText = {
  en: {
    title: 'Vapour pressure of water',
    about: 'Absolute pressure at which water boils at a temperature.',
    inputs: { temperature: 'Temperature' },
    outputs: { vapourPressure: 'Vapour pressure' },
    notes: {},
  },
};
