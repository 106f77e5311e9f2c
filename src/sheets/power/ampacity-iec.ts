import type { Problem } from '../../quantity/problem.ts';
import { choiceField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { beyondTable } from '../table-problem.ts';
import { ambients } from './bounds.ts';
import { always, caution } from './caution.ts';
import {
  type IecMethod,
  iecAmpacityTable,
  iecConductor,
  iecMethods,
  iecRatedSizes,
} from './iec-conductors.ts';
import { iecAmbientFactor, iecCorrectionTables, iecGroupFactor } from './iec-correction-factors.ts';

/**
 * What a copper PVC cable may carry by IEC rules.
 *
 * Method   I_z = table(size, method) k_ambient k_group
 * Symbols  size      one of `iecRatedSizes`
 *          ambient   scalar  K, at most 55 degC
 *          circuits  count   1 to 9, bunched or enclosed together
 * Returns  A: table value and allowed; undefined beyond the tables of correction
 * Cost     O(sizes)
 * Source   IEC 60364-5-52 and BS 7671 table 4D1A
 */
export const ampacityIec = (
  size: string,
  method: IecMethod,
  ambient: number,
  circuits: number,
): { readonly table: number; readonly allowed: number } | undefined => {
  const warm = iecAmbientFactor(ambient);
  const group = iecGroupFactor(circuits);
  if (warm === undefined || group === undefined) return undefined;
  const table = iecConductor(size).ampacity![iecMethods.indexOf(method)]!;
  return { table, allowed: table * warm * group };
};

export interface CablePlace {
  readonly method: IecMethod;
  readonly ambient: number;
  readonly circuits: number;
}

/** Where a cable lies; the same fields wherever IEC cables are asked for. */
export const cablePlaceFields = {
  method: choiceField<IecMethod>('\\text{method}', iecMethods),
  ambient: numberField('temperature', '\\theta_a', { ...ambients, assumed: 303.15 }),
  circuits: numberField('count', 'n', { least: 1, most: 100, assumed: 1 }),
} as const;

export const cablePlaceProblems = (i: CablePlace): Problem[] => [
  ...(iecAmbientFactor(i.ambient) === undefined
    ? [beyondTable('ambient', i.ambient, '<= 328.15', iecCorrectionTables)]
    : []),
  ...(iecGroupFactor(i.circuits) === undefined
    ? [beyondTable('circuits', i.circuits, '<= 9', iecCorrectionTables)]
    : []),
];

/** Limits that every answer from the table carries. */
export const rowFromMemory = (size: string, method: IecMethod): boolean =>
  iecConductor(size).fromMemory.includes(method);

interface AmpacityIecInputs extends CablePlace {
  readonly size: string;
}

export const ampacityIecSheet = defineSheet({
  id: 'power/ampacity-iec',
  version: 1,
  inputs: { size: { ...choiceField('S', iecRatedSizes), table: iecAmpacityTable }, ...cablePlaceFields },
  outputs: {
    table: numberField('current', 'I_{\\text{table}}'),
    allowed: numberField('current', 'I_z'),
  },
  formula: ['I_z = I_{\\text{table}}(S, \\text{method})\\, k_a\\, k_n'],
  limits: [
    caution,
    always('IEC_60364_5_52'),
    { code: 'IEC_METHODS_DIFFER', broken: ({ method }) => method.startsWith('c-') },
    { code: 'IEC_ROW_FROM_MEMORY', broken: ({ size, method }) => rowFromMemory(size, method) },
    { code: 'COOLER_THAN_TABLE', broken: ({ ambient }) => ambient < 298.15 - 1e-6 },
  ],
  sources: [iecAmpacityTable, iecCorrectionTables],
  check: cablePlaceProblems,
  compute: (i: AmpacityIecInputs) => ampacityIec(i.size, i.method, i.ambient, i.circuits)!,
});
