import { choiceField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { beyondTable } from '../table-problem.ts';
import {
  ampacityIec,
  type CablePlace,
  cablePlaceFields,
  cablePlaceProblems,
  rowFromMemory,
} from './ampacity-iec.ts';
import { someCurrents } from './bounds.ts';
import { always, caution } from './caution.ts';
import { iecAmpacityTable, iecRatedSizes } from './iec-conductors.ts';
import { iecCorrectionTables } from './iec-correction-factors.ts';
import { standardRating } from './standard-device.ts';
import { iecRatingsTable } from './standard-ratings.ts';

export type IecProtection = 'circuit-breaker' | 'fuse';

/** Conventional operating current over the rating: I_2 <= 1.45 I_z holds by itself for breakers, not for gG fuses. */
const conventionalShare = { 'circuit-breaker': 1.45, fuse: 1.6 } as const;

const sameCurrent = 1e-9;

/**
 * Device and smallest copper PVC cable for a design current by IEC rules.
 *
 * Method   I_n: next standard rating up from I_B; size: first with I_z >= I_n and 1.45 I_z >= I_2
 * Symbols  I_B  current  scalar  A;  I_2 = 1.45 I_n of a breaker, 1.6 I_n of a fuse
 * Returns  rating, size, allowed ampacity; undefined beyond the tables
 * Cost     O(sizes)
 * Source   IEC 60364-4-43 from memory, tables by `ampacityIec`
 */
export const conductorIec = (
  current: number,
  protection: IecProtection,
  { method, ambient, circuits }: CablePlace,
): { readonly rating: number; readonly size: string; readonly allowed: number } | undefined => {
  const rating = standardRating(current, 'iec', 'up');
  if (rating === undefined) return undefined;
  const needed = Math.max(rating, (rating * conventionalShare[protection]) / 1.45);
  for (const size of iecRatedSizes) {
    const allowed = ampacityIec(size, method, ambient, circuits)?.allowed;
    if (allowed !== undefined && allowed >= needed * (1 - sameCurrent)) return { rating, size, allowed };
  }
  return undefined;
};

interface ConductorIecInputs extends CablePlace {
  readonly current: number;
  readonly protection: IecProtection;
}

export const conductorIecSheet = defineSheet({
  id: 'power/conductor-iec',
  version: 1,
  inputs: {
    current: numberField('current', 'I_B', someCurrents),
    protection: choiceField<IecProtection>('\\text{device}', ['circuit-breaker', 'fuse']),
    ...cablePlaceFields,
  },
  outputs: {
    rating: numberField('current', 'I_n'),
    size: { ...choiceField('S', iecRatedSizes), table: iecAmpacityTable },
    allowed: numberField('current', 'I_z'),
  },
  formula: [
    'I_B \\le I_n \\le I_z, \\quad I_2 \\le 1.45\\, I_z',
    'I_z = I_{\\text{table}}(S, \\text{method})\\, k_a\\, k_n',
  ],
  limits: [
    caution,
    always('IEC_60364_5_52'),
    always('IEC_RATINGS_FROM_MEMORY'),
    always('IEC_COORDINATION'),
    { code: 'IEC_METHODS_DIFFER', broken: ({ method }) => method.startsWith('c-') },
    { code: 'IEC_ROW_FROM_MEMORY', broken: ({ method }, { size }) => rowFromMemory(size, method) },
    { code: 'COOLER_THAN_TABLE', broken: ({ ambient }) => ambient < 298.15 - 1e-6 },
  ],
  sources: [iecAmpacityTable, iecCorrectionTables, iecRatingsTable],
  check: (i) => {
    const place = cablePlaceProblems(i);
    if (place.length > 0) return place;
    return conductorIec(i.current, i.protection, i) === undefined
      ? [beyondTable('current', i.current, '250 A, 95 mm2', iecAmpacityTable)]
      : [];
  },
  compute: (i: ConductorIecInputs) => conductorIec(i.current, i.protection, i)!,
});
