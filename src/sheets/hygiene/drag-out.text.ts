import type { SheetText } from '../sheet-text.ts';

export const dragOutText: SheetText = {
  en: {
    title: 'Liquid that a bottle carries',
    about: 'What drained bottles carry from stage to stage, from weighing them drained and dry.',
    inputs: {
      drained: 'Masses drained',
      dry: 'Masses dry, in the same order',
      density: 'Density of the liquid',
    },
    outputs: { carry: 'Carried by a bottle, mean', deviation: 'Standard deviation', most: 'Most carried' },
    notes: {
      DRAG_OUT_FEW: 'Fewer than twenty bottles: the usual number (common practice).',
      DRAG_OUT_DRAIN_TIME:
        'It falls with the time to drain, so it is less at a slow index: weigh at the fastest index that will run.',
    },
    problems: { DRAG_OUT_LIGHTER: '{path}: bottle {given} is lighter drained than dry.' },
  },
};
