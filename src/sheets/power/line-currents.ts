import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { currents, powerFactors } from './bounds.ts';
import { always, caution } from './caution.ts';

type Phasor = readonly [re: number, im: number];

/** A lagging load current on a line-to-line voltage at an angle. */
const phasor = (current: number, powerFactor: number, angle: number): Phasor => {
  const turned = angle - Math.acos(Math.min(1, powerFactor));
  return [current * Math.cos(turned), current * Math.sin(turned)];
};
const apart = (one: Phasor, other: Phasor): number => Math.hypot(one[0] - other[0], one[1] - other[1]);

/**
 * Line currents of three loads between the lines, of any size and power factor.
 *
 * Method   I_a = |I_ab - I_ca|, I_b = |I_bc - I_ab|, I_c = |I_ca - I_bc| as phasors, voltages in the order a-b-c
 * Symbols  current      [3]  A of the loads a-b, b-c, c-a
 *          powerFactor  [3]  ratio, lagging
 * Returns  [3] A
 * Assumes  balanced voltages; an unbalanced delta is never sqrt(3) of anything
 * Cost     O(1)
 * Source   three-phase circuit theory
 */
export const lineCurrents = (
  current: readonly [number, number, number],
  powerFactor: readonly [number, number, number],
): readonly [number, number, number] => {
  const turn = (2 * Math.PI) / 3;
  const ab = phasor(current[0], powerFactor[0], 0);
  const bc = phasor(current[1], powerFactor[1], -turn);
  const ca = phasor(current[2], powerFactor[2], turn);
  return [apart(ab, ca), apart(bc, ab), apart(ca, bc)];
};

interface LineCurrentsInputs {
  readonly ab: number;
  readonly bc: number;
  readonly ca: number;
  readonly powerFactorAb: number;
  readonly powerFactorBc: number;
  readonly powerFactorCa: number;
}

export const lineCurrentsSheet = defineSheet({
  id: 'power/line-currents',
  version: 1,
  inputs: {
    ab: numberField('current', 'I_{ab}', currents),
    bc: numberField('current', 'I_{bc}', currents),
    ca: numberField('current', 'I_{ca}', currents),
    powerFactorAb: numberField('ratio', '\\cos\\varphi_{ab}', { ...powerFactors, assumed: 1 }),
    powerFactorBc: numberField('ratio', '\\cos\\varphi_{bc}', { ...powerFactors, assumed: 1 }),
    powerFactorCa: numberField('ratio', '\\cos\\varphi_{ca}', { ...powerFactors, assumed: 1 }),
  },
  outputs: {
    a: numberField('current', 'I_a'),
    b: numberField('current', 'I_b'),
    c: numberField('current', 'I_c'),
  },
  formula: [
    'I_a = | \\underline{I}_{ab} - \\underline{I}_{ca} |, \\quad I_b = | \\underline{I}_{bc} - \\underline{I}_{ab} |, \\quad I_c = | \\underline{I}_{ca} - \\underline{I}_{bc} |',
    'I_a = \\sqrt{ I_{ab}^2 + I_{ca}^2 + I_{ab} I_{ca} } \\text{ at one power factor}',
  ],
  limits: [
    caution,
    {
      code: 'LINES_UNEQUAL',
      broken: (_, { a, b, c }) => Math.max(a, b, c) - Math.min(a, b, c) > 0.1 * Math.max(a, b, c),
    },
    always('LINES_BALANCED_VOLTAGE'),
  ],
  sources: [{ title: 'three-phase circuit theory', place: 'phasors of a delta', mark: 'computed' }],
  compute: (i: LineCurrentsInputs) => {
    const [a, b, c] = lineCurrents([i.ab, i.bc, i.ca], [i.powerFactorAb, i.powerFactorBc, i.powerFactorCa]);
    return { a, b, c };
  },
});
