import type { SheetText } from '../sheet-text.ts';
import { notes } from './notes.text.ts';

export const workingPointText: SheetText = {
  en: {
    title: 'Pressure that the compressor must hold',
    about:
      'Machine pressure and everything lost on the way, against the pressures at which the compressor cuts in and out.',
    inputs: {
      machinePressure: 'Pressure at the machine while running',
      dryerLoss: 'Loss of the dryer',
      filterLoss: 'Loss of the filters, dirty',
      pipeLoss: 'Loss of the pipe',
      regulatorLoss: 'Loss of the regulator',
      band: 'Control band',
      cutOut: 'Cut-out of the compressor',
    },
    outputs: {
      cutInNeeded: 'Least cut-in',
      cutOutNeeded: 'Least cut-out',
      margin: 'Margin of the cut-out',
    },
    notes: {
      WORKING_POINT_SHORT:
        'The compressor cuts out below what the machine needs: the pressure sags in every cycle.',
      WORKING_POINT_ALLOWANCES:
        'Losses that are not given are allowances of practice (memory): dryer 0.2, dirty filters 0.5, pipe 0.1, regulator 0.5, band 1 bar.',
      CAUTION_COMPRESSED_AIR: notes.CAUTION_COMPRESSED_AIR,
    },
  },
};
