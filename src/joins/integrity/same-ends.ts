import { takesTerminal } from '../join-kinds.ts';
import type { LaidJoin } from '../laid-join.ts';
import { terminalKey } from '../terminal.ts';
import { faultOf, type JoinFault } from './fault.ts';

/** Whether both ends of it are said to be one terminal. */
export const endsInOne = ({ from, to }: LaidJoin): boolean => {
  const key = terminalKey(from);
  return key !== undefined && key === terminalKey(to);
};

/** What is led from a terminal to the same one: an end was copied or mistyped. */
export const sameEnds = (joins: readonly LaidJoin[]): readonly JoinFault[] =>
  joins
    .filter((join) => takesTerminal(join.kind) && endsInOne(join))
    .map((join) => faultOf('JOIN_ENDS_SAME', [join], { join: join.tag, terminal: join.from.label ?? '' }));
