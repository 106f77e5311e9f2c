import type { SheetText } from '../sheet-text.ts';
import { notesOf } from './notes.text.ts';

export const machineSupplyUsText: SheetText = {
  en: {
    title: 'Supply of a machine, US',
    about:
      'Ampacity of the supply conductors of one machine, the greatest rating of its main device, and what it draws.',
    inputs: {
      voltage: 'Voltage, line to line',
      motors: 'Table full-load currents that run together',
      devices: 'Ratings of their branch devices',
      heating: 'Current of all resistance heaters',
      apparatus: 'Current of other apparatus',
    },
    outputs: {
      ampacity: 'Ampacity needed',
      deviceLimit: 'Limit of the main device',
      deviceRating: 'Greatest standard rating',
      running: 'Running current',
      apparentPower: 'Apparent power',
    },
    notes: {
      ...notesOf('CAUTION_ELECTRICAL', 'NEC_670', 'DEVICE_FROM_MEMORY', 'ROUNDED_DOWN'),
      CONSERVATIVE_SUM:
        'Currents of different power factor are added as they are, which is a little too much. Only loads that can run together count. A heater’s branch device larger than every motor’s would count as the largest.',
    },
  },
};
