import type { SheetText } from '../sheet-text.ts';

export const meterAllowanceText: SheetText = {
  en: {
    title: 'What a meter may change between two floors',
    about: 'Standard deviation of the volume of a pulse where the flow or the viscosity is another.',
    inputs: {
      meterClass: 'Largest error of the meter over its range',
      ratio: 'Flow or kinematic viscosity there over here',
    },
    outputs: { deviation: 'Standard deviation of the volume of a pulse' },
    notes: {
      METER_HABIT:
        'That a tenfold change goes through all of the class is common practice: trials at two flows, or with the product, say it of this meter.',
    },
  },
};
