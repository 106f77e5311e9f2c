import { choiceField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { beyondTable } from '../table-problem.ts';
import { someCurrents, voltages } from './bounds.ts';
import { always, caution } from './caution.ts';
import { transformerCurrent } from './transformer-fault.ts';
import {
  iecTablesBegin,
  type TransformerList,
  transformerLists,
  transformerSizes,
  transformerSizeTable,
} from './transformer-sizes.ts';

const sameRating = 1e-9;

/**
 * Standard three-phase transformer for a design current.
 *
 * Method   S >= sqrt(3) U I (1 + spare), next standard size up
 * Symbols  U  voltage  scalar  V line to line, secondary;  I  current  scalar  A;  spare  ratio
 * Returns  needed and standard VA; the standard one undefined beyond the list
 * Cost     O(sizes)
 * Source   selection tables of makers
 */
export const transformerSize = (
  voltage: number,
  current: number,
  spare: number,
  list: TransformerList,
): { readonly needed: number; readonly size: number | undefined } => {
  const needed = Math.sqrt(3) * voltage * current * (1 + spare);
  return { needed, size: transformerSizes[list].find((size) => size >= needed * (1 - sameRating)) };
};

interface TransformerSizeInputs {
  readonly voltage: number;
  readonly current: number;
  readonly spare: number;
  readonly list: TransformerList;
}

export const transformerSizeSheet = defineSheet({
  id: 'power/transformer-size',
  version: 2,
  inputs: {
    voltage: numberField('voltage', 'U', voltages),
    current: numberField('current', 'I', someCurrents),
    spare: numberField('ratio', 's', { least: 0, most: 2, assumed: 0.2 }),
    list: choiceField<TransformerList>('\\text{list}', transformerLists),
  },
  outputs: {
    needed: numberField('apparentPower', 'S_{\\text{need}}'),
    size: numberField('apparentPower', 'S_n'),
    ratedCurrent: numberField('current', 'I_r'),
  },
  formula: [
    'S_{\\text{need}} = \\sqrt{3}\\, U I (1 + s), \\quad S_n = \\min \\{ S \\ge S_{\\text{need}} \\}',
    'I_r = \\frac{S_n}{\\sqrt{3}\\, U}',
  ],
  limits: [
    caution,
    { code: 'TRANSFORMER_LIST_US', broken: ({ list }) => list === 'us' },
    { code: 'TRANSFORMER_LIST_IEC', broken: ({ list }) => list === 'iec' },
    {
      code: 'TRANSFORMER_SMALL_FROM_MEMORY',
      broken: ({ list }, { size }) => list === 'iec' && size < iecTablesBegin,
    },
    always('TRANSFORMER_CHANGES_NO_FREQUENCY'),
  ],
  sources: [transformerSizeTable],
  check: (i) =>
    transformerSize(i.voltage, i.current, i.spare, i.list).size === undefined
      ? [
          beyondTable(
            'current',
            i.current,
            `${transformerSizes[i.list].at(-1)! / 1000} kVA`,
            transformerSizeTable,
          ),
        ]
      : [],
  compute: (i: TransformerSizeInputs) => {
    const { needed, size } = transformerSize(i.voltage, i.current, i.spare, i.list);
    return { needed, size: size!, ratedCurrent: transformerCurrent(size!, i.voltage) };
  },
});
