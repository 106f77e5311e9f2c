import type { SheetText } from '../sheet-text.ts';

export const levelVolumeText: SheetText = {
  en: {
    title: 'Level to volume',
    about: 'Volume that a step of the level is worth in the neck of a bottle.',
    inputs: { bore: 'Bore of the neck at the level', step: 'Step of the level' },
    outputs: { volume: 'Volume of the step' },
    notes: {},
  },
};
