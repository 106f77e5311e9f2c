import type { SheetText } from '../sheet-text.ts';
import { notes } from './notes.text.ts';

export const surgeText: SheetText = {
  en: {
    title: 'Surge of a closing valve',
    about: 'Rise of pressure when a valve stops the flow in a pipe.',
    inputs: {
      density: 'Density',
      waveSpeed: 'Wave speed',
      length: 'Length to the nearest free surface',
      velocityChange: 'Velocity stopped in the common pipe',
      closingTime: 'Closing time',
      pressure: 'Pressure before',
    },
    outputs: {
      criticalTime: 'Time of a wave there and back',
      joukowsky: 'Rise when closed at once',
      rise: 'Rise',
      highest: 'Highest pressure',
      lowest: 'Lowest pressure',
    },
    notes: {
      SURGE_COLUMN_PARTS:
        'The wave behind takes the pressure to a vacuum: the column may part and slam together.',
      PRESSURE_CAUTION: notes.PRESSURE_CAUTION,
    },
  },
};
