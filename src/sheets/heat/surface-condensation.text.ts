import type { SheetText } from '../sheet-text.ts';

export const surfaceCondensationText: SheetText = {
  en: {
    title: 'Condensation on a surface',
    about: 'Whether a pipe, ceiling or wall of a room gets wet, and from which humidity on.',
    inputs: {
      room: 'Temperature of the room',
      relativeHumidity: 'Relative humidity of the room',
      surface: 'Temperature of the surface',
    },
    outputs: {
      dewPoint: 'Dew point of the room',
      margin: 'Surface over the dew point',
      driest: 'Humidity at which it begins to get wet',
    },
    notes: {
      SURFACE_WET:
        'The surface gets wet: drops from a ceiling over the filler are a finding. Insulate, warm the surface or dry the air.',
      SURFACE_NEAR: 'Less than 2 K over the dew point: it gets wet when a washer starts or a door opens.',
      SURFACE_FROST: 'The surface is below freezing: frost grows on it.',
    },
  },
};
