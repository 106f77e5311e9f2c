import type { SheetText } from '../sheet-text.ts';

export const waterViscosityText: SheetText = {
  en: {
    title: 'Viscosity of water',
    about: 'Dynamic and kinematic viscosity of liquid water at 0.1 MPa from its temperature.',
    inputs: { temperature: 'Temperature' },
    outputs: { viscosity: 'Dynamic viscosity', kinematicViscosity: 'Kinematic viscosity' },
    notes: {},
  },
};
