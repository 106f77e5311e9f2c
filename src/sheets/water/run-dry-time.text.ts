import type { SheetText } from '../sheet-text.ts';

export const runDryTimeText: SheetText = {
  en: {
    title: 'Time until a tank runs dry',
    about: 'How long a stored volume lasts while more is drawn than comes in.',
    inputs: { volume: 'Usable volume', draw: 'Mean draw', makeUp: 'Make-up flow' },
    outputs: { time: 'Time until dry' },
    notes: {},
    problems: { RUN_DRY_NEVER: 'The make-up keeps pace with the draw: the tank does not run dry.' },
  },
};
