import type { SheetText } from '../sheet-text.ts';

export const waveSpeedText: SheetText = {
  en: {
    title: 'Speed of a pressure wave',
    about: 'Speed at which a shock runs through a full elastic pipe; free gas slows it much.',
    inputs: {
      bulkModulus: 'Bulk modulus of the liquid',
      density: 'Density',
      bore: 'Bore',
      wall: 'Wall thickness',
      elasticModulus: 'Elastic modulus of the wall',
      gasFraction: 'Free gas by volume',
      pressure: 'Pressure of the gas',
    },
    outputs: { waveSpeed: 'Wave speed' },
    notes: {
      WAVE_THICK_WALL: 'Thick wall: the thin-wall formula makes the wave slower than it is.',
      WAVE_FREE_GAS: 'Free gas softens the shock, and a meter counts it as liquid.',
    },
  },
};
