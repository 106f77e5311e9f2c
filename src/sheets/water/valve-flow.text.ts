import type { SheetText } from '../sheet-text.ts';

export const valveFlowText: SheetText = {
  en: {
    title: 'Flow through a valve',
    about: 'Flow that a pressure difference drives through a valve of known Kv.',
    inputs: { kv: 'Kv', pressureDifference: 'Pressure difference', density: 'Density' },
    outputs: { flow: 'Flow' },
    notes: { VALVE_BACKWARD: 'The pressure difference is negative: the flow runs backward.' },
  },
};
