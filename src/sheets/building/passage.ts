import { choiceField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { clearances, heights, lengths } from './bounds.ts';
import { movingCaution } from './caution.ts';
import { plainGeometry } from './sources.ts';

export type Passes = 'passes' | 'too wide' | 'too high' | 'too wide and too high';

/** Room that an opening leaves for a dimension, m: opening - part - n clearances. Below 0 it does not pass. */
export const passageMargin = (opening: number, part: number, clearance: number, sides: number): number =>
  opening - part - sides * clearance;

/** Words of a passage from its two margins. */
export const passes = (width: number, height: number): Passes => {
  // a fit to the last rounding is a fit
  const wide = width < -1e-9;
  const high = height < -1e-9;
  if (wide) return high ? 'too wide and too high' : 'too wide';
  return high ? 'too high' : 'passes';
};

interface PassageInputs {
  readonly width: number;
  readonly height: number;
  readonly gearHeight: number;
  readonly openingWidth: number;
  readonly openingHeight: number;
  readonly clearance: number;
}

export const passageSheet = defineSheet({
  id: 'building/passage',
  version: 1,
  inputs: {
    width: numberField('length', 'w', lengths),
    height: numberField('length', 'h', lengths),
    gearHeight: numberField('length', 'h_g', { ...heights, assumed: 0 }),
    openingWidth: numberField('length', 'W', lengths),
    openingHeight: numberField('length', 'H', lengths),
    clearance: numberField('length', 'c', { ...clearances, assumed: 0.05 }),
  },
  outputs: {
    widthMargin: numberField('length', 'm_w'),
    heightMargin: numberField('length', 'm_h'),
    answer: choiceField<Passes>('\\text{answer}', [
      'passes',
      'too wide',
      'too high',
      'too wide and too high',
    ]),
  },
  formula: ['m_w = W - w - 2 c, \\quad m_h = H - (h + h_g) - c'],
  limits: [
    movingCaution,
    { code: 'PASSAGE_SHORT', broken: (_, { answer }) => answer !== 'passes' },
    { code: 'GEAR_HEIGHT', broken: () => true },
    { code: 'PASSAGE_CLEAR_SIZE', broken: () => true },
  ],
  sources: [plainGeometry],
  compute: (i: PassageInputs) => {
    const widthMargin = passageMargin(i.openingWidth, i.width, i.clearance, 2);
    const heightMargin = passageMargin(i.openingHeight, i.height + i.gearHeight, i.clearance, 1);
    return { widthMargin, heightMargin, answer: passes(widthMargin, heightMargin) };
  },
});
