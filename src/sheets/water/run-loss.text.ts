import type { SheetText } from '../sheet-text.ts';
import { notes } from './notes.text.ts';

export const runLossText: SheetText = {
  en: {
    title: 'Loss along a run',
    about:
      'Pressure lost in all pieces from the source to the manifold: pipes with fittings, valves, and parts with a constant loss.',
    inputs: {
      bore: 'Bores',
      length: 'Lengths',
      roughness: 'Roughnesses of the wall',
      fittings: 'Loss coefficients K',
      kv: 'Kv of valves, 0 for none',
      constantLoss: 'Constant losses',
      flow: 'Flow',
      density: 'Density',
      viscosity: 'Dynamic viscosity',
    },
    outputs: {
      loss: 'Loss of the run',
      pieceLoss: 'Loss of each piece',
      highestVelocity: 'Highest velocity',
      reynolds: 'Reynolds number in each piece',
    },
    notes: { FRICTION_TRANSITION: notes.FRICTION_TRANSITION, FRICTION_ROUGHNESS: notes.FRICTION_ROUGHNESS },
    problems: { PIPE_ROUGHNESS: notes.PIPE_ROUGHNESS },
  },
};
