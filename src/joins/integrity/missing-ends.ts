import { hasTwoEnds } from '../join-kinds.ts';
import type { LaidJoin, Side } from '../laid-join.ts';
import { faultOf, type JoinFault } from './fault.ts';

const isThere = ({ label, on }: LaidJoin[Side]): boolean => label !== undefined || on !== undefined;

/** What is led somewhere and does not say where from or where to. */
export const missingEnds = (joins: readonly LaidJoin[]): readonly JoinFault[] =>
  joins
    .filter(({ kind }) => hasTwoEnds(kind))
    .flatMap((join) =>
      (['from', 'to'] as const)
        .filter((side) => !isThere(join[side]))
        .map((side) => faultOf('JOIN_END_MISSING', [join], { join: join.tag, side })),
    );
