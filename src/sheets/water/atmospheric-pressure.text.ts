import type { SheetText } from '../sheet-text.ts';

export const atmosphericPressureText: SheetText = {
  en: {
    title: 'Atmospheric pressure at an altitude',
    about: 'Mean pressure of the air in the standard atmosphere. Weather moves it by about 3 %.',
    inputs: { altitude: 'Altitude over the sea' },
    outputs: { pressure: 'Atmospheric pressure' },
    notes: {},
  },
};
