import type { SheetText } from '../sheet-text.ts';

export const capSensorDelayText: SheetText = {
  en: {
    title: 'Delay of a chute sensor',
    about: 'Time for which one passing cap covers the sensor of a cap chute.',
    inputs: { pitch: 'Pitch of the caps', speed: 'Speed of the caps at the sensor' },
    outputs: { delay: 'Covered by one cap' },
    notes: {
      CAP_DELAY_LEAST:
        'The delay must be longer, or caps on the move stop and start the sorter. The slowest cap decides.',
    },
  },
};
