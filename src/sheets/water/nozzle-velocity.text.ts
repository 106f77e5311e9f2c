import type { SheetText } from '../sheet-text.ts';

export const nozzleVelocityText: SheetText = {
  en: {
    title: 'Nozzle velocity',
    about:
      'Speed of the liquid at the mouth of a filling nozzle. What a product allows depends on its foaming; the values noted here are trial values of the trade.',
    inputs: { flow: 'Flow of the lane', bore: 'Bore of the mouth' },
    outputs: { velocity: 'Velocity at the mouth' },
    notes: {
      NOZZLE_FOAMING: 'Over 0.5 m/s: a foaming product may froth before the nozzle is covered.',
      NOZZLE_FAST: 'Over 1.5 m/s: even still water may splash and draw in air from an open nozzle.',
    },
  },
};
