import type { SheetText } from '../sheet-text.ts';

export const controlValveText: SheetText = {
  en: {
    title: 'Control valve for a liquid, with choking',
    about:
      'Kv that a control valve needs for a liquid, and the pressure difference beyond which its flow no longer grows. All pressures absolute.',
    inputs: {
      flow: 'Flow',
      inletPressure: 'Pressure before',
      outletPressure: 'Pressure behind',
      density: 'Density',
      vapourPressure: 'Vapour pressure',
      criticalPressure: 'Critical pressure',
      recovery: 'Pressure recovery factor F_L',
    },
    outputs: {
      criticalRatioFactor: 'Critical pressure ratio factor F_F',
      chokedDifference: 'Difference at which it chokes',
      sizingDifference: 'Difference that counts',
      kv: 'Kv needed',
    },
    notes: {
      VALVE_CHOKED:
        'The flow is choked: a lower pressure behind the valve brings no more flow, and the valve cavitates or flashes.',
      VALVE_FITTINGS_LEFT_OUT: 'Reducers beside the valve are left out: they lower its capacity.',
    },
    problems: {
      VALVE_VAPOUR: 'The liquid boils at this pressure.',
      VALVE_NO_DIFFERENCE: 'The pressure behind the valve must be under that before it.',
    },
  },
};
