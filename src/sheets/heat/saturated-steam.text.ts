import type { SheetText } from '../sheet-text.ts';
import { notesOf } from './notes.text.ts';

export const saturatedSteamText: SheetText = {
  en: {
    title: 'Saturated steam',
    about:
      'Temperature and heat of saturated steam at the pressure of a gauge and the atmosphere of the site.',
    inputs: { pressure: 'Pressure at the gauge', atmosphere: 'Atmosphere of the site' },
    outputs: {
      temperature: 'Temperature',
      liquidHeat: 'Heat of the boiling water, over 0 °C',
      latentHeat: 'Heat of condensing',
      vapourHeat: 'Heat of the steam, over 0 °C',
      vapourDensity: 'Density of the steam',
    },
    notes: notesOf('CAUTION_STEAM'),
  },
};
