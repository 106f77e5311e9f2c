import type { SheetText } from '../sheet-text.ts';

export const manifoldPressureText: SheetText = {
  en: {
    title: 'Pressure at the manifold',
    about: 'Pressure at the manifold from that of the source, the heights and the loss of the run.',
    inputs: {
      sourcePressure: 'Pressure at the source',
      sourceHeight: 'Height of the source',
      manifoldHeight: 'Height of the manifold',
      runLoss: 'Loss of the run',
      density: 'Density',
    },
    outputs: { manifoldPressure: 'Pressure at the manifold' },
    notes: {
      MANIFOLD_BELOW_ATMOSPHERE: 'Below the pressure of the air: the lanes may draw air in.',
      MANIFOLD_NO_PRESSURE: 'Less than nothing is left: the run cannot pass this flow.',
    },
  },
};
