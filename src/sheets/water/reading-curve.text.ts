import type { SheetText } from '../sheet-text.ts';

export const readingCurveText: SheetText = {
  en: {
    title: 'Supply from readings at the manifold',
    about: 'Pressure at the manifold at any flow, from readings with more and with fewer lanes open.',
    inputs: { flows: 'flow at each reading', pressures: 'pressure at each reading', flow: 'flow now' },
    outputs: {
      shutOffPressure: 'pressure with all lanes shut',
      residual: 'pressure that the curve misses',
      pressure: 'pressure at the manifold',
    },
    notes: {
      READING_CURVE_ONE: 'One reading only: its pressure is taken to hold at every flow.',
      READING_CURVE_EXTRAPOLATED: 'The flow lies more than a fifth above the highest reading.',
    },
  },
};
