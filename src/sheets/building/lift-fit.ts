import { choiceField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { clearances, heights, lengths, masses, someMasses } from './bounds.ts';
import { movingCaution, structuralCaution } from './caution.ts';
import { passageMargin } from './passage.ts';
import { plainGeometry } from './sources.ts';

export type LiftAnswer = 'fits' | 'too large' | 'too heavy' | 'too large and too heavy';

interface LiftFitInputs {
  readonly mass: number;
  readonly gearMass: number;
  readonly people: number;
  readonly length: number;
  readonly width: number;
  readonly height: number;
  readonly gearHeight: number;
  readonly capacity: number;
  readonly carDepth: number;
  readonly carWidth: number;
  readonly carHeight: number;
  readonly doorWidth: number;
  readonly doorHeight: number;
  readonly clearance: number;
}

/** Mass that a lift's plate counts for a person, kg: 75, EN 81-20 (memory). */
const personMass = 75;

export const liftFitSheet = defineSheet({
  id: 'building/lift-fit',
  version: 1,
  inputs: {
    mass: numberField('mass', 'm', someMasses),
    gearMass: numberField('mass', 'm_g', { ...masses, assumed: 0 }),
    people: numberField('count', 'n', { least: 0, most: 50, assumed: 1 }),
    length: numberField('length', 'l', lengths),
    width: numberField('length', 'w', lengths),
    height: numberField('length', 'h', lengths),
    gearHeight: numberField('length', 'h_g', { ...heights, assumed: 0 }),
    capacity: numberField('mass', 'm_a', someMasses),
    carDepth: numberField('length', 'L_c', lengths),
    carWidth: numberField('length', 'W_c', lengths),
    carHeight: numberField('length', 'H_c', lengths),
    doorWidth: numberField('length', 'W_d', lengths),
    doorHeight: numberField('length', 'H_d', lengths),
    clearance: numberField('length', 'c', { ...clearances, assumed: 0.05 }),
  },
  outputs: {
    load: numberField('mass', 'm_l'),
    loadShare: numberField('ratio', 's'),
    depthMargin: numberField('length', 'm_d'),
    widthMargin: numberField('length', 'm_w'),
    heightMargin: numberField('length', 'm_h'),
    answer: choiceField<LiftAnswer>('\\text{answer}', [
      'fits',
      'too large',
      'too heavy',
      'too large and too heavy',
    ]),
  },
  formula: [
    'm_l = m + m_g + n \\cdot 75\\ \\mathrm{kg}, \\quad s = \\frac{m_l}{m_a}',
    'm_d = L_c - l - 2 c, \\quad m_w = \\min(W_c, W_d) - w - 2 c, \\quad m_h = \\min(H_c, H_d) - (h + h_g) - c',
  ],
  limits: [
    movingCaution,
    structuralCaution,
    { code: 'LIFT_NO', broken: (_, { answer }) => answer !== 'fits' },
    { code: 'GEAR_HEIGHT', broken: () => true },
    { code: 'LIFT_SILL', broken: () => true },
    { code: 'LIFT_PERSON_MEMORY', broken: ({ people }) => people > 0 },
  ],
  sources: [plainGeometry, { title: 'EN 81-20, mass of a person', place: '75 kg', mark: 'memory' }],
  compute: (i: LiftFitInputs) => {
    const load = i.mass + i.gearMass + i.people * personMass;
    const depthMargin = passageMargin(i.carDepth, i.length, i.clearance, 2);
    const widthMargin = passageMargin(Math.min(i.carWidth, i.doorWidth), i.width, i.clearance, 2);
    const heightMargin = passageMargin(
      Math.min(i.carHeight, i.doorHeight),
      i.height + i.gearHeight,
      i.clearance,
      1,
    );
    const large = Math.min(depthMargin, widthMargin, heightMargin) < -1e-9;
    const heavy = load > i.capacity;
    const answer: LiftAnswer = large
      ? heavy
        ? 'too large and too heavy'
        : 'too large'
      : heavy
        ? 'too heavy'
        : 'fits';
    return { load, loadShare: load / i.capacity, depthMargin, widthMargin, heightMargin, answer };
  },
});
