import type { SheetText } from '../sheet-text.ts';

export const heightAboveText: SheetText = {
  en: {
    title: 'Height of a surface above a point',
    about: 'Height of a liquid surface above the point where its pressure counts.',
    inputs: { surface: 'Surface over the floor', point: 'Point over the floor' },
    outputs: { height: 'Surface above the point' },
    notes: {},
  },
};
