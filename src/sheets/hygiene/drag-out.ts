import { listField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { listLengths } from '../list-lengths.ts';
import { always } from './caution.ts';
import { derived } from './sources.ts';

const masses = { least: 0, most: 50 } as const;

/** Mean and standard deviation of a sample; one alone has no deviation. */
const meanAndDeviation = (values: readonly number[]): { mean: number; deviation: number } => {
  const mean = values.reduce((a, b) => a + b, 0) / values.length;
  const squares = values.reduce((sum, value) => sum + (value - mean) ** 2, 0);
  return { mean, deviation: values.length > 1 ? Math.sqrt(squares / (values.length - 1)) : 0 };
};

interface DragOutInputs {
  readonly drained: readonly number[];
  readonly dry: readonly number[];
  readonly density: number;
}

/**
 * Liquid that each bottle carries, from its mass drained and dry.
 *
 * Method   v = (m_w - m_d)/rho
 * Symbols  m_w, m_d  drained, dry  [n]     kg
 *          rho       density       scalar  kg/m3
 * Returns  volumes, m3
 * Cost     O(n)
 * Source   definition
 */
export const carriedVolumes = ({ drained, dry, density }: DragOutInputs): readonly number[] =>
  drained.map((mass, i) => (mass - dry[i]!) / density);

export const dragOutSheet = defineSheet({
  id: 'hygiene/drag-out',
  version: 1,
  inputs: {
    drained: listField('mass', 'm_w', masses),
    dry: listField('mass', 'm_d', masses),
    density: numberField('density', '\\rho', { least: 500, most: 2200, assumed: 1000 }),
  },
  outputs: {
    carry: numberField('volume', 'v'),
    deviation: numberField('volume', 's'),
    most: numberField('volume', 'v_{\\max}'),
  },
  formula: [
    'v_i = \\frac{m_{w,i} - m_{d,i}}{\\rho}, \\quad v = \\frac{1}{n} \\sum_i v_i, \\quad s^2 = \\frac{\\sum_i (v_i - v)^2}{n - 1}',
  ],
  limits: [
    { code: 'DRAG_OUT_FEW', broken: ({ drained }) => drained.length < 20 },
    always('DRAG_OUT_DRAIN_TIME'),
  ],
  sources: [derived],
  check: ({ drained, dry }) => {
    const problems = listLengths({ drained, dry });
    if (problems.length > 0) return problems;
    const place = drained.findIndex((mass, i) => mass < dry[i]!);
    return place < 0
      ? []
      : [{ code: 'DRAG_OUT_LIGHTER', path: 'drained', given: place + 1, allowed: `>= ${dry[place]}` }];
  },
  compute: (i: DragOutInputs) => {
    const volumes = carriedVolumes(i);
    const { mean, deviation } = meanAndDeviation(volumes);
    return { carry: mean, deviation, most: Math.max(...volumes) };
  },
});
