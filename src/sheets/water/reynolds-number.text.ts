import type { SheetText } from '../sheet-text.ts';

export const reynoldsNumberText: SheetText = {
  en: {
    title: 'Reynolds number',
    about: 'Tells laminar from turbulent flow in a full pipe.',
    inputs: { velocity: 'Velocity', bore: 'Bore', kinematicViscosity: 'Kinematic viscosity' },
    outputs: { reynolds: 'Reynolds number' },
    notes: {
      REYNOLDS_LAMINAR:
        'Laminar flow (Reynolds number up to 2 000): the loss goes with the flow, not with its square, and depends on temperature.',
      REYNOLDS_TRANSITION: 'Between laminar and turbulent (2 000 to 4 000): the flow may be either.',
    },
  },
};
