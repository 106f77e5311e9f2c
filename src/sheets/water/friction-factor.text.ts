import type { SheetText } from '../sheet-text.ts';
import { notes } from './notes.text.ts';

export const frictionFactorText: SheetText = {
  en: {
    title: 'Friction factor',
    about:
      'Darcy friction factor of a full round pipe: laminar, turbulent, and between them a curve without a step.',
    inputs: { reynolds: 'Reynolds number', relativeRoughness: 'Roughness over bore', law: 'Turbulent law' },
    outputs: { frictionFactor: 'Darcy friction factor' },
    options: { law: { colebrook: 'Colebrook-White', 'swamee-jain': 'Swamee-Jain, as EPANET has it' } },
    notes: {
      FRICTION_TRANSITION: notes.FRICTION_TRANSITION,
      FRICTION_ROUGHNESS: notes.FRICTION_ROUGHNESS,
      FRICTION_REYNOLDS: 'Reynolds number over 100 million: outside what the law was measured for.',
    },
  },
};
