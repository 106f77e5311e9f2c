import { labelGroup } from '../join-kinds.ts';
import type { LaidJoin } from '../laid-join.ts';
import { faultOf, type JoinFault, type JoinFaultCode } from './fault.ts';
import { groupBy } from './group-by.ts';

const plain = (text: string): string => text.trim().toUpperCase();

const twice = (
  code: JoinFaultCode,
  joins: readonly LaidJoin[],
  keyOf: (join: LaidJoin) => string | undefined,
  shown: (join: LaidJoin) => string,
): readonly JoinFault[] =>
  [...groupBy(joins, keyOf).values()]
    .filter((same) => same.length > 1)
    .map((same) => faultOf(code, same, { given: shown(same[0]!) }));

/** Labels, cores of a cable and codes that stand on more than one join: which is meant, nobody can tell. */
export const usedTwice = (joins: readonly LaidJoin[]): readonly JoinFault[] => [
  ...twice(
    'JOIN_LABEL_TWICE',
    joins,
    ({ kind, label }) => (label === undefined ? undefined : `${labelGroup(kind)} ${plain(label)}`),
    ({ label }) => label ?? '',
  ),
  ...twice(
    'JOIN_CORE_TWICE',
    joins,
    ({ cable, core }) =>
      cable === undefined || core === undefined ? undefined : JSON.stringify([plain(cable), plain(core)]),
    ({ cable, core }) => `${cable}, ${core}`,
  ),
  ...twice(
    'JOIN_CODE_TWICE',
    joins,
    ({ code }) => code,
    ({ code }) => code,
  ),
];
