import type { SheetText } from '../sheet-text.ts';
import { notesOf } from './notes.text.ts';

export const openTankLossText: SheetText = {
  en: {
    title: 'Heat lost by an open tank',
    about: 'Evaporation, radiation and walls of an open bath by a table for still air at 60 °F (15.6 °C).',
    inputs: {
      bath: 'Temperature of the bath',
      surface: 'Open surface',
      walls: 'Walls and floor',
      insulation: 'Insulation of the walls',
    },
    outputs: {
      evaporation: 'Evaporation',
      radiation: 'Radiation of the surface',
      wallLoss: 'Walls',
      total: 'In all',
      evaporated: 'Water that evaporates',
    },
    options: {
      insulation: { bare: 'none', '25 mm': '25 mm (1 in)', '50 mm': '50 mm (2 in)', '75 mm': '75 mm (3 in)' },
    },
    notes: {
      ...notesOf('CAUTION_HOT_WATER', 'OPEN_TANK_ROUGH', 'EVAPORATION_TO_ROOM'),
      OPEN_TANK_STILL_AIR:
        'The table is for still air at 60 °F (15.6 °C). Spray inside a housing loses by its exhaust air instead: air flow times the water that it takes up.',
    },
  },
};
