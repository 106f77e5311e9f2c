import type { SheetText } from '../sheet-text.ts';
import { notesOf } from './notes.text.ts';

export const wallLagText: SheetText = {
  en: {
    title: 'Lag of a bottle wall',
    about: 'Temperature of a thin bottle wall some time after a hot spray begins.',
    inputs: {
      thickness: 'Wall thickness',
      density: 'Density of the wall',
      specificHeat: 'Specific heat of the wall',
      conductivity: 'Thermal conductivity of the wall',
      surface: 'Heat that the spray gives to the surface',
      spray: 'Temperature of the spray',
      start: 'Temperature of the wall before',
      time: 'Time under the spray',
    },
    outputs: {
      wall: 'Temperature of the wall',
      timeConstant: 'Time constant',
      biot: 'Biot number',
      step: 'Step from wall to spray',
    },
    notes: {
      ...notesOf('LETHALITY_COLDEST', 'CAUTION_SCALD'),
      WALL_THICK:
        'Biot number of 0.1 or more: the wall has no single temperature, and its far side lags more than this. Thick bases of glass fail it.',
      WALL_STEP_GLASS:
        'A step of more than 35 K: glass is usually warmed and cooled by no more in a zone (from memory; tests go to 42 K and more).',
    },
  },
};
