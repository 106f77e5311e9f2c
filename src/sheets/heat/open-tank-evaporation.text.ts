import type { SheetText } from '../sheet-text.ts';
import { notesOf } from './notes.text.ts';

export const openTankEvaporationText: SheetText = {
  en: {
    title: 'Evaporation of an open bath',
    about: 'Heat and water that leave a quiet open surface into the air of the room, with their band.',
    inputs: {
      bath: 'Temperature of the bath',
      surface: 'Open surface',
      room: 'Temperature of the room',
      relativeHumidity: 'Relative humidity of the room',
      velocity: 'Speed of the air along it',
    },
    outputs: {
      heat: 'Heat',
      low: 'Heat, 20 % less',
      high: 'Heat, 20 % more',
      evaporated: 'Water that evaporates',
    },
    notes: {
      ...notesOf('OPEN_TANK_ROUGH', 'EVAPORATION_TO_ROOM'),
      EVAPORATION_NONE: 'The air is damper than the surface: nothing evaporates, water condenses on it.',
    },
  },
};
