import type { SheetText } from '../sheet-text.ts';
import { notesOf, problemsOf } from './notes.text.ts';

export const steamNeedText: SheetText = {
  en: {
    title: 'Steam need',
    about: 'Steam that a heat load takes through a coil or blown into the bath.',
    inputs: {
      heat: 'Heat wanted',
      pressure: 'Steam pressure at the gauge of the machine',
      atmosphere: 'Atmosphere of the site',
      use: 'Way of heating',
      bath: 'Temperature of the bath',
    },
    outputs: {
      steam: 'Steam',
      heatGiven: 'Heat that the steam gives by its mass',
      steamTemperature: 'Temperature of the steam',
      waterAdded: 'Water that it adds to the bath',
    },
    options: { use: { indirect: 'through a coil or jacket', direct: 'blown into the water' } },
    notes: {
      ...notesOf('CAUTION_STEAM'),
      STEAM_DIRECT:
        'Steam blown in thins the chemicals of the bath and must be fit for contact with food: ask for the boiler water’s treatment in writing.',
      STEAM_LITTLE_HOTTER:
        'The steam is less than 20 K hotter than the bath: a coil gets very large, and a trap may not drain it.',
      STEAM_WET:
        'Dry steam is taken. Steam of 90 % dryness gives a tenth less by each kilogram, and start-up takes more than the steady figure.',
    },
    problems: problemsOf('STEAM_NOT_HOTTER'),
  },
};
