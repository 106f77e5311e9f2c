import type { SheetText } from '../sheet-text.ts';

export const readingSupplyText: SheetText = {
  en: {
    title: 'Supply known by readings',
    about: 'A curve through the pressures that a gauge at the manifold showed with so many lanes open.',
    inputs: {
      lanesOpen: 'Lanes open',
      pressures: 'Pressures at the manifold',
      kv: 'Kv of one lane',
      manifoldHeight: 'Height of the manifold',
      outletHeight: 'Height of the outlet',
      density: 'Density',
      flow: 'Flow asked',
    },
    outputs: {
      flows: 'Flows at the readings',
      shutOffPressure: 'Pressure at no flow, A',
      factor: 'Factor B, in Pa per (m³/s)²',
      residual: 'Pressure missed at the readings (rms)',
      pressure: 'Pressure at the flow asked',
    },
    notes: {
      READING_ONE:
        'Readings at one number of lanes only: the pressure is taken as the same at every flow. A reading with another number of lanes open would tell.',
      READING_FLAT: 'The pressure did not fall with more lanes open: taken as the same at every flow.',
      READING_EXTRAPOLATED: 'More flow than at any reading: extrapolated.',
      READING_FIT_POOR:
        'The curve misses the readings by more than 3 %: read again, the supply may have moved.',
    },
  },
};
