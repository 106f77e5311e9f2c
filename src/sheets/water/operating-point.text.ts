import type { SheetText } from '../sheet-text.ts';
import { notes } from './notes.text.ts';

export const operatingPointText: SheetText = {
  en: {
    title: 'Operating point of pump and system',
    about:
      'Flow at which the head of the pump equals what the system asks. Found by iteration; what is left over is shown.',
    inputs: {
      shutOffHead: 'Head at no flow, A',
      factor: 'Factor B, in m per (m³/s) to the power C',
      exponent: 'Exponent C',
      speedRatio: 'Speed over the speed of the curve',
      staticHead: 'Static head',
      bore: 'Bore',
      length: 'Length',
      roughness: 'Roughness of the wall',
      fittings: 'Sum of the loss coefficients K',
      density: 'Density',
      viscosity: 'Dynamic viscosity',
    },
    outputs: {
      flow: 'Flow',
      head: 'Head',
      hydraulicPower: 'Power given to the liquid',
      leastSpeedRatio: 'Least speed ratio that lifts at all',
      residual: 'Head left over by the iteration',
    },
    notes: {
      PUMP_CANNOT_LIFT: 'The pump cannot lift to the static head: nothing flows.',
      PUMP_SPEED_FAR: notes.PUMP_SPEED_FAR,
      PUMP_RUN_OUT: notes.PUMP_RUN_OUT,
    },
    problems: {
      PIPE_ROUGHNESS: notes.PIPE_ROUGHNESS,
      PUMP_SHUT_OFF: 'A pump must give some head at no flow.',
    },
  },
};
