import type { ConditionId } from './condition.ts';
import type { ProofContext } from './proof-context.ts';

/** Whether a drive turns with the frequency of the floor. */
const followsFloor = ({ book }: ProofContext): boolean =>
  (book.line?.drives ?? []).some(({ inverter }) => inverter !== true);

/** Air of each drop that the line takes air from. */
export const airConditions = ({ book }: ProofContext): readonly ConditionId[] =>
  (book.line?.airDrops ?? []).map(({ tag }): ConditionId => `airPressure ${tag}`);

/** What moves the line: the frequency that its motors follow, and its air. */
export const drivenConditions = (c: ProofContext): readonly ConditionId[] => [
  ...(followsFloor(c) ? (['frequency'] as const) : []),
  ...airConditions(c),
];
