import type { SheetText } from '../sheet-text.ts';

export const volumeAt20Text: SheetText = {
  en: {
    title: 'Volume at 20 °C',
    about:
      'What a volume of water filled hot or cold measures at the temperature at which contents are declared.',
    inputs: { volume: 'Volume as filled', temperature: 'Temperature of filling' },
    outputs: { volumeAt20: 'Volume at 20 °C', ratio: 'Volume at 20 °C over volume as filled' },
    notes: {},
  },
};
