import type { SheetText } from '../sheet-text.ts';
import { notesOf } from './notes.text.ts';

export const energyShiftText: SheetText = {
  en: {
    title: 'Electrical energy of a shift',
    about: 'Energy that motors, heaters and standby draw in a shift, and the power when all run together.',
    inputs: {
      hours: 'Time',
      motorPower: 'Plate ratings of the motors',
      loadFactor: 'Load factors',
      efficiency: 'Efficiencies',
      motorDuty: 'Duties of the motors',
      heaterPower: 'Powers of the heaters',
      heaterDuty: 'Duties of the heaters',
      standby: 'Standby power',
    },
    outputs: {
      motors: 'Energy of the motors',
      heaters: 'Energy of the heaters',
      energy: 'Energy',
      together: 'Power when all run together',
    },
    notes: {
      ...notesOf('CAUTION_ELECTRICAL'),
      ENERGY_NOT_DEMAND:
        'The demand that a utility bills, over 15 or 30 minutes, comes from heaters and the largest motors together, not from energy over time; supply and wires are never sized from kWh.',
    },
  },
};
