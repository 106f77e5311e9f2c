import type { Book } from '../../book/index.ts';
import { carriesPower } from '../colour/potential.ts';
import type { LaidJoin } from '../laid-join.ts';
import { faultOf, type JoinFault } from './fault.ts';
import { groupBy } from './group-by.ts';
import { pairsOf } from './section-pairs.ts';

/**
 * Sections between which conductors run that carry power, or of which nobody says that they do not, and no bond.
 *
 * Assumes  a bond by way of a third section is none: the sections are connected one by one
 * Source   IEC 60204-1:2016 8.2.1, protective bonding of all exposed conductive parts, memory
 */
export const missingBonds = (joins: readonly LaidJoin[], book: Book): readonly JoinFault[] => {
  const pairOf = pairsOf(book);
  const groups = groupBy(joins, (join) => pairOf(join)?.join('\n'));
  return [...groups].flatMap(([key, across]) => {
    if (across.some(({ kind }) => kind === 'bond')) return [];
    const conductors = across.filter(({ kind }) => kind === 'conductor');
    const live = conductors.filter(({ potential }) => carriesPower(potential) === 'yes');
    const unsaid = conductors.filter(({ potential }) => carriesPower(potential) === 'unsaid');
    const [one = '', other = ''] = key.split('\n');
    // one that shows it is enough: a cable would else name all its cores
    const shown = live[0] ?? unsaid[0];
    if (shown === undefined) return [];
    const code = live.length > 0 ? 'JOIN_BOND_MISSING' : 'JOIN_BOND_UNSURE';
    return [faultOf(code, [shown], { one, other })];
  });
};
