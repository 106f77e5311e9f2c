import type { SheetText } from '../sheet-text.ts';

export const sprayJetText: SheetText = {
  en: {
    title: 'Speed and impact of a jet',
    about: 'Speed of a jet behind its nozzle and the force with which it presses on what stops it.',
    inputs: {
      flow: 'Flow of the nozzle',
      pressure: 'Pressure at the nozzle',
      density: 'Density',
      velocityCoefficient: 'Coefficient of velocity',
    },
    outputs: { velocity: 'Speed', impact: 'Impact' },
    notes: {
      SPRAY_JET_NOT_AT_PUMP:
        'The pressure at the nozzle counts, not at the pump. From 2.0 to 1.5 bar a nozzle loses 13 % of its flow and 25 % of its impact.',
      SPRAY_JET_CUTS: 'A jet over 20 bar cuts skin: guards, and the local rule for high-pressure cleaning.',
    },
  },
};
