import { choiceField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { beyondTable } from '../table-problem.ts';
import {
  ampacityUs,
  type ConductorPlace,
  conductorPlaceFields,
  placeProblems,
  type UsAmpacity,
} from './ampacity-us.ts';
import { someCurrents } from './bounds.ts';
import { always, caution } from './caution.ts';
import { necMotorArticle } from './sources.ts';
import { ampacityTable, usSizes } from './us-conductors.ts';
import { correctionTables } from './us-correction-factors.ts';

export type UsLoad = 'motor' | 'continuous' | 'not-continuous' | 'ampacity-as-given';

/** Ampacity over load current: one motor by NEC 430.22, a continuous load by 215.2; the rest as it is. */
export const usLoadFactor = (load: UsLoad): number => (load === 'motor' || load === 'continuous' ? 1.25 : 1);

/** A product such as 1.25 x 52 is 65 to a person, whatever the last bit says. */
const sameCurrent = 1e-9;

/**
 * Smallest copper conductor that may carry a current by US rules.
 *
 * Method   first size whose allowed ampacity is at least the needed one; equality passes
 * Symbols  needed  scalar  A;  place  as for `ampacityUs`
 * Returns  size and its ampacities; undefined beyond the largest size or off the ambient table
 * Cost     O(sizes)
 * Source   NEC table 310.16 by `ampacityUs`
 */
export const conductorUs = (
  needed: number,
  { insulation, terminals, ambient, conductors, edition }: ConductorPlace,
): (UsAmpacity & { readonly size: string }) | undefined => {
  for (const size of usSizes) {
    const ampacity = ampacityUs(size, insulation, terminals, ambient, conductors, edition);
    if (ampacity !== undefined && ampacity.allowed >= needed * (1 - sameCurrent))
      return { size, ...ampacity };
  }
  return undefined;
};

interface ConductorUsInputs extends ConductorPlace {
  readonly current: number;
  readonly load: UsLoad;
}

export const conductorUsSheet = defineSheet({
  id: 'power/conductor-us',
  version: 1,
  inputs: {
    current: numberField('current', 'I', someCurrents),
    load: choiceField<UsLoad>('\\text{load}', ['motor', 'continuous', 'not-continuous', 'ampacity-as-given']),
    ...conductorPlaceFields,
  },
  outputs: {
    needed: numberField('current', 'I_{\\text{need}}'),
    size: choiceField('\\text{size}', usSizes),
    allowed: numberField('current', 'I_z'),
    tableNeeded: numberField('current', 'I_{\\text{need}} / k'),
  },
  formula: [
    'I_{\\text{need}} = 1.25\\, I \\text{ for one motor or a continuous load, else } I',
    '\\text{size} = \\min \\{ s : I_z(s) \\ge I_{\\text{need}} \\}',
    'I_z = \\min ( k\\, I_{\\text{table}}(\\theta_{\\text{ins}}),\\ I_{\\text{table}}(\\theta_{\\text{term}}) )',
  ],
  limits: [
    caution,
    always('NEC_310_16'),
    { code: 'TERMINALS_75', broken: ({ terminals }) => terminals === '75' },
    { code: 'SMALL_CONDUCTOR', broken: (_, { size }) => ['14 AWG', '12 AWG', '10 AWG'].includes(size) },
    {
      code: 'EDITION_OTHER_SIZE',
      broken: (i, { size }) => otherEdition(i) !== size,
      parts: (i) => ({ other: otherEdition(i) ?? '-' }),
    },
    always('CHECK_DROP_TOO'),
    { code: 'TABLE_CURRENT_NOT_NAMEPLATE', broken: ({ load }) => load === 'motor' },
  ],
  sources: [ampacityTable, correctionTables, necMotorArticle],
  check: (i) => {
    const place = placeProblems(i);
    if (place.length > 0) return place;
    return conductorUs(usLoadFactor(i.load) * i.current, i) === undefined
      ? [beyondTable('current', i.current, '500 kcmil, one conductor per phase', ampacityTable)]
      : [];
  },
  compute: (i: ConductorUsInputs) => {
    const needed = usLoadFactor(i.load) * i.current;
    const { size, allowed, table, corrected } = conductorUs(needed, i)!;
    return { needed, size, allowed, tableNeeded: (needed * table) / corrected };
  },
});

/** Size that the other edition of the table would give. */
const otherEdition = (i: ConductorUsInputs): string | undefined =>
  conductorUs(usLoadFactor(i.load) * i.current, {
    ...i,
    edition: i.edition === 'from-2011' ? 'to-2008' : 'from-2011',
  })?.size;
