import type { SheetText } from '../sheet-text.ts';
import { notesOf } from './notes.text.ts';
import { dropCollapse } from './voltage-drop.text.ts';

export const motorStartText: SheetText = {
  en: {
    title: 'Start of a motor on its run',
    about: 'Current, torque and voltage drop while a motor starts, and the dip at the transformer.',
    inputs: {
      lockedRotor: 'Locked-rotor current at full voltage',
      method: 'Way of starting',
      ratio: 'Tap or voltage of the starter',
      voltage: 'Voltage, line to line',
      length: 'Length, one way',
      resistance: 'Resistance of a conductor',
      reactance: 'Reactance of a conductor',
      powerFactor: 'Power factor while starting',
      faultCurrent: 'Fault current at the transformer',
    },
    outputs: {
      current: 'Line current',
      torque: 'Starting torque as a share of the direct one at full voltage',
      drop: 'Drop along the run, line to line',
      dropShare: 'Drop as a share',
      dip: 'Dip at the transformer, worst case',
    },
    options: {
      method: {
        direct: 'direct',
        'star-delta': 'star-delta',
        autotransformer: 'autotransformer',
        'soft-starter': 'electronic soft starter',
      },
    },
    notes: {
      ...notesOf('CAUTION_ELECTRICAL', 'START_ASK_UTILITY'),
      START_WEAK: 'Less than half of the direct starting torque is left: ask whether the load starts at all.',
      START_DROP:
        'Over 10 % along the run while starting: contactors and controls on the same run may drop out.',
      START_SHARES_FROM_MEMORY:
        'The shares of autotransformer (a squared) and soft starter (v and v squared) are from memory.',
      START_POWER_FACTOR:
        'The power factor of a standing motor is 0.2 to 0.4 (from memory); the drop follows from it.',
    },
    problems: dropCollapse,
  },
};
