import type { SheetText } from '../sheet-text.ts';

export const tankForRunText: SheetText = {
  en: {
    title: 'Tank that carries a run',
    about:
      'Volume that a supply tank, full at the start, must give beside its make-up so that it does not run dry before a run is over.',
    inputs: { draw: 'Mean draw of the line', makeUp: 'Make-up flow', duration: 'Time of the run' },
    outputs: { usable: 'Volume that the tank must give' },
    notes: {
      TANK_LEVEL_FALLS:
        'Counted down to the level at which the tank gives no more, not to its floor. The level falls over the run: where the tank stands above the filler, the fill slows down with it.',
      TANK_CARRIED_BY_MAKE_UP:
        'The make-up brings what the line draws: the tank need carry no more than what is drawn within a fill.',
    },
  },
};
