import type { SheetText } from '../sheet-text.ts';
import { notes } from './notes.text.ts';

export const pipeLossText: SheetText = {
  en: {
    title: 'Loss in a pipe and its fittings',
    about: 'Pressure lost along one pipe of constant bore and in the fittings on it.',
    inputs: {
      flow: 'Flow',
      bore: 'Bore',
      length: 'Length',
      roughness: 'Roughness of the wall',
      fittings: 'Sum of the loss coefficients K',
      density: 'Density',
      viscosity: 'Dynamic viscosity',
    },
    outputs: {
      velocity: 'Velocity',
      reynolds: 'Reynolds number',
      straightLoss: 'Loss in the straight pipe',
      fittingLoss: 'Loss in the fittings',
      loss: 'Loss',
      headLoss: 'Loss as head of the liquid',
    },
    notes: { FRICTION_TRANSITION: notes.FRICTION_TRANSITION, FRICTION_ROUGHNESS: notes.FRICTION_ROUGHNESS },
    problems: { PIPE_ROUGHNESS: notes.PIPE_ROUGHNESS },
  },
};
