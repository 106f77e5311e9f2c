import type { SheetText } from '../sheet-text.ts';

export const valveLossText: SheetText = {
  en: {
    title: 'Loss in a valve',
    about: 'Pressure that a valve of known Kv takes from a flow.',
    inputs: { kv: 'Kv', flow: 'Flow', density: 'Density' },
    outputs: { loss: 'Loss' },
    notes: {},
  },
};
