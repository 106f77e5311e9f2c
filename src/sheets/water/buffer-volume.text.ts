import type { SheetText } from '../sheet-text.ts';

export const bufferVolumeText: SheetText = {
  en: {
    title: 'Buffer volume and make-up flow',
    about:
      'Volume that must stand ready so that a steady make-up carries a draw that comes in bursts; the mean draw is the least make-up.',
    inputs: { durations: 'Durations of the pattern', demands: 'Flows drawn', makeUp: 'Make-up flow' },
    outputs: { volume: 'Buffer volume', meanDemand: 'Mean draw', peakDemand: 'Highest draw' },
    notes: {
      BUFFER_MARGIN: 'Without dead volume, switching band and margin: add them (20 to 50 % is usual).',
    },
    problems: {
      BUFFER_MAKE_UP: 'The make-up is under the mean draw: no tank is large enough, it only buys time.',
    },
  },
};
