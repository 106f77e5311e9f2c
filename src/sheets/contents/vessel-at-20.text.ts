import type { SheetText } from '../sheet-text.ts';

export const vesselAt20Text: SheetText = {
  en: {
    title: 'Capacity of a vessel at 20 °C',
    about: 'Capacity of a bottle or measure at 20 °C from what it held at another temperature.',
    inputs: {
      volume: 'Volume that it held',
      temperature: 'Temperature then',
      expansion: 'Cubic expansion of the vessel',
    },
    outputs: { capacity: 'Capacity at 20 °C' },
    notes: {
      VESSEL_NOT_PRODUCT: 'This speaks of the vessel. The product in it expands about ten times as much.',
    },
  },
};
