import type { SheetText } from '../sheet-text.ts';
import { notesOf, problemsOf } from './notes.text.ts';

export const heatingWaterNeedText: SheetText = {
  en: {
    title: 'Heating water need',
    about: 'Flow of heating water that gives a heat between its supply and its return.',
    inputs: { heat: 'Heat wanted', supply: 'Supply temperature', back: 'Return temperature' },
    outputs: { flow: 'Flow at the supply temperature', massFlow: 'Flow by mass' },
    notes: {
      ...notesOf('CAUTION_HOT_WATER'),
      HEATING_WATER_SMALL_STEP:
        'Less than 5 K between supply and return: the flow is large, and an error of one kelvin changes it by a fifth.',
    },
    problems: problemsOf('HEAT_NO_FALL'),
  },
};
